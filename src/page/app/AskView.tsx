import { Explain, useExplaining } from "./ask/Explain.js";
import { HowFar } from "./ask/HowFar.js";
import { Suppose } from "./ask/Suppose.js";
import { Verify } from "./ask/Verify.js";
import { WhereBelt } from "./ask/WhereBelt.js";
import type { Desk } from "./desk.js";

/** What is asked at the machine and at the bench, the shortest questions first. */
export function AskView({ desk }: { readonly desk: Desk }) {
  const explaining = useExplaining(desk);
  return (
    <section class="asking" aria-label="Ask">
      <WhereBelt desk={desk} explaining={explaining} />
      <HowFar desk={desk} explaining={explaining} />
      <Verify desk={desk} />
      <Suppose desk={desk} />
      <Explain desk={desk} explaining={explaining} />
    </section>
  );
}
