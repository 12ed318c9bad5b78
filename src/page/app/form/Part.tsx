import { kindFor, kindOf } from "../../schema.js";
import { ChoiceField, TextField, TickField } from "./Field.js";
import type { PartProps } from "./form.js";
import { ListPart } from "./ListPart.js";
import { NamedPart } from "./NamedPart.js";
import { RecordPart } from "./RecordPart.js";
import { SeveralKinds } from "./SeveralKinds.js";

/** A part of the file as one fills it in: whatever its schema says that it is. */
export function Part(props: PartProps) {
  const { form, way, schema } = props;
  switch (kindOf(schema)) {
    case "several kinds":
      return <SeveralKinds {...props} now={kindFor(schema, form.nodes.value.value(way))} />;
    case "record":
      return <RecordPart {...props} />;
    case "list":
      return <ListPart {...props} />;
    case "named":
      return <NamedPart {...props} />;
    case "choice":
      return <ChoiceField {...props} />;
    case "tick":
      return <TickField {...props} />;
    case "field":
      return <TextField {...props} />;
  }
}
