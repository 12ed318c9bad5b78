import type { Way } from "../../file/edit.js";
import { kindFor, kindOf } from "../../schema.js";
import { ChoiceField, TextField, TickField } from "./Field.js";
import { type Form, keyOf, type PartProps } from "./form.js";
import { ListPart } from "./ListPart.js";
import { NamedPart } from "./NamedPart.js";
import { RecordPart } from "./RecordPart.js";
import { SeveralKinds } from "./SeveralKinds.js";

/** Names given elsewhere in the file, of which one is meant here. */
function namesFor(form: Form, way: Way): string[] {
  if (keyOf(way) !== keyOf(["paper", "printer"])) return [];
  const printers = form.nodes.value.value(["printers"]);
  return typeof printers === "object" && printers !== null ? Object.keys(printers) : [];
}

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
    case "field": {
      const names = namesFor(form, way);
      return names.length > 0 ? (
        <ChoiceField {...props} schema={{ ...schema, enum: names }} />
      ) : (
        <TextField {...props} />
      );
    }
  }
}
