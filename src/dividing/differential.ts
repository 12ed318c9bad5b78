import { type Fraction, fraction } from "../quantity/fraction.js";

/** What the change gears between spindle and plate must do so that `holes` taken on `circle` give `divisions`: turns of the
 *  plate for one of the spindle. Positive: the plate turns with the crank, negative: against it. 0: no gears needed.
 *  Brown & Sharpe, Practical Treatise on Milling: x = (H V − N n) / H. */
export function differentialRatio(ratio: number, divisions: number, circle: number, holes: number): Fraction {
  return fraction(circle * ratio - divisions * holes, circle);
}
