import { type Signal, useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";

/** ISO/IEC 7810, ID-1: a bank card, mm. */
export const CARD_LENGTH = 85.6;
const CARD_BREADTH = 53.98;
/** The longest frame, px: of a screen that packs them closely. */
const LONGEST = 700;

/** A screen does not know how large it is: a bank card held against it tells. Where it is narrower than the card the frame stands on
 *  end, and is never wider than what is seen of it. `cardPixels`: the card's length; 0 while nobody has measured. */
export function TrueSize({ cardPixels }: { readonly cardPixels: Signal<number> }) {
  const section = useRef<HTMLElement>(null);
  const room = useSignal(LONGEST);
  useEffect(() => {
    if (section.current === null) return undefined;
    const watching = new ResizeObserver(([seen]) => (room.value = seen?.contentRect.width ?? LONGEST));
    watching.observe(section.current);
    return () => watching.disconnect();
  }, []);
  const longest = Math.min(LONGEST, Math.floor((room.value * CARD_LENGTH) / CARD_BREADTH));
  const length = Math.min(longest, cardPixels.value || (CARD_LENGTH * 96) / 25.4);
  const breadth = (length * CARD_BREADTH) / CARD_LENGTH;
  const onEnd = length > room.value;
  const [width, height] = onEnd ? [breadth, length] : [length, breadth];
  return (
    <section class="card" aria-label="True size on this screen" ref={section}>
      <h2>True size on this screen</h2>
      <p class="about">
        Hold a bank card{onEnd && ", on end,"} against the screen and make the frame just as large. “True size” above
        the paper then is true.
      </p>
      <input
        type="range"
        min="180"
        max={longest}
        step="0.5"
        aria-label="Size of the frame"
        value={length}
        onInput={(event) => {
          cardPixels.value = Number(event.currentTarget.value);
        }}
      />
      <div class="bank" style={{ width: `${width}px`, height: `${height}px` }} />
    </section>
  );
}
