import { createRequire } from "node:module";

type Point = { readonly x: number; readonly y: number };
export type Entity = {
  readonly type: string;
  readonly layer: string;
  readonly vertices?: readonly Point[];
  readonly center?: Point;
  readonly radius?: number;
  readonly startAngle?: number;
  readonly endAngle?: number;
};

/** What an independent parser finds in a DXF. Its package calls itself a module but its bundle is a script. */
export function readDxf(text: string): { entities: Entity[]; header: Record<string, unknown>; layers: string[] } {
  const parser = createRequire(import.meta.url)("dxf-parser") as unknown;
  const Parser = ((parser as { DxfParser?: unknown }).DxfParser ??
    (parser as { default?: unknown }).default ??
    parser) as new () => {
    parseSync(text: string): {
      entities: Entity[];
      header: Record<string, unknown>;
      tables: { layer: { layers: Record<string, unknown> } };
    };
  };
  const { entities, header, tables } = new Parser().parseSync(text);
  return { entities, header, layers: Object.keys(tables.layer.layers) };
}
