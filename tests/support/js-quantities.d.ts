/** The part of js-quantities that the second opinions use; the package brings no types. */
declare module "js-quantities" {
  export default function Qty(text: string): { to(unit: string): { readonly scalar: number } };
}
