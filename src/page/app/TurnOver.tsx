import { stations } from "./stations.js";
import type { View } from "./view.js";

/** Whether bench and paper share one place, as the style has it: only there the one hides the other. */
export const sharesOnePlace = (): boolean => (document.querySelector(".turn-over")?.getClientRects().length ?? 0) > 0;

/** Where there is no room for both side by side, one touch lays the paper on the bench, and takes it off again. */
export function TurnOver({ view, title }: { readonly view: View; readonly title: string }) {
  const at = view.at.value;
  const [up, under] = view.paperUp.value
    ? ["Bench", stations.some(({ name }) => name === at) ? at : "size of the screen"]
    : ["Paper", title];
  return (
    <button type="button" class="turn-over" onClick={view.turnOver}>
      <b>{up}</b> <span>{under}</span>
    </button>
  );
}
