/** Printed words by language; written by `npm run generate` from templates/words, never by hand. */
import type { LanguageCode } from "./languages.generated.js";

/** What is to be filled into each text. */
export type Gaps = {
  "units and numbers.decimal mark": never;
  "units and numbers.nouns": never;
  "units and numbers.unit mm": never;
  "units and numbers.unit in": never;
  "units and numbers.rpm": never;
  "units and numbers.list and": "list" | "last";
  "page.no revision": never;
  "page.revision": "revision";
  "page.measured": "day";
  "page.true size": never;
  "page.label sheet": never;
  "page.label machine": never;
  "page.label revision": never;
  "page.label measured": never;
  "page.label page": never;
  "page.of": "page" | "pages";
  "page.not given": never;
  "page.who comes first": never;
  "page.chuck limit": "rpm";
  "page.chuck unknown": never;
  "page.both limits": "chuck" | "spindle";
  "page.spindle limit, chuck unknown": "spindle";
  "page.card of": "card" | "cards";
  "page.goes on": "name";
  "page.not corrected": never;
  "page.corrected": "printer";
  "page.corrected by": "factors";
  "page.corrected by alone": "factors";
  "page.across factor": "factor";
  "page.down factor": "factor";
  "page.skew": "skew";
  "page.check bar": "length" | "side";
  "page.along across": never;
  "page.along down": never;
  "page.used for turning": never;
  "page.used for drilling": never;
  "cautions.eyes": never;
  "cautions.tailstock": never;
  "cautions.tailstock 1": never;
  "cautions.tailstock 2": never;
  "cautions.drill": never;
  "cautions.drill 1": never;
  "cautions.drill 2": never;
  "cautions.off motor": never;
  "cautions.off treadle": never;
  "cautions.off hand": never;
  "cautions.power off motor": never;
  "cautions.power off treadle": never;
  "cautions.power off hand": never;
  "cautions.belt": "off";
  "cautions.belt 1": never;
  "cautions.belt 2": never;
  "cautions.belt 3": never;
  "cautions.dial": never;
  "cautions.dial 1": never;
  "cautions.thread": "off";
  "cautions.thread 1": never;
  "cautions.thread 2": never;
  "cautions.job": never;
  "cautions.job and drill": never;
  "cautions.job 1": never;
  "cautions.job 2": never;
  "cautions.bar": never;
  "cautions.bar and drill": never;
  "cautions.bar 1": never;
  "cautions.bar 2": never;
  "cautions.taper": "off";
  "cautions.taper 1": never;
  "cautions.drill to the end": never;
  "cautions.never finely": "material";
  "cautions.never finer than": "material" | "feed" | "sources";
  "belt card.belt": never;
  "belt card.rpm": never;
  "belt card.turn diameters": "unit";
  "belt card.drill diameters": "unit" | "most";
  "belt card.other diameters": "operation" | "unit";
  "belt card.diameters": "unit";
  "belt card.unit mm": never;
  "belt card.unit in": never;
  "belt card.all": never;
  "belt card.to": "to";
  "belt card.from": "from";
  "belt card.range": "from" | "to";
  "belt card.only": never;
  "belt card.motor": never;
  "belt card.treadle": never;
  "belt card.crank": never;
  "belt card.spindle": never;
  "belt card.countershaft": never;
  "belt card.countershaft number": "n";
  "belt card.clamp": never;
  "belt card.begin with": "position";
  "belt card.begin": "position";
  "belt card.drawn": "position";
  "belt card.one belt": "stages";
  "belt card.no pulleys": never;
  "belt card.sign": "sign" | "name";
  "belt card.blank": never;
  "belt card.omitted": "positions";
  "belt card.either": never;
  "belt card.covered": "positions";
  "belt card.by ratio": never;
  "belt card.measure first": never;
  "belt card.reading doubtful": never;
  "belt card.turn no higher": never;
  "belt card.set": never;
  "belt card.unknown": never;
  "belt card.do not use": never;
  "belt card.may reach": "rpm";
  "belt card.in two rows": never;
  "belt card.more speed": never;
  "belt card.larger too fast": never;
  "belt card.too fast": "materials";
  "belt card.no figures": "materials";
  "belt card.caution elsewhere": "materials";
  "belt card.further": "n";
  "belt card.further named": "materials";
  "belt card.further with cautions": "materials";
  "speed diagram.rpm": never;
  "speed diagram.position": never;
  "speed diagram.lines left": "speeds";
  "speed diagram.out of sight": "speeds";
  "speed diagram.no bar": "materials";
  "speed diagram.barless by rpm": "material" | "figures" | "positions";
  "speed diagram.barless by size": "material" | "positions";
  "speed diagram.position at": "position" | "rpm";
  "speed diagram.no position": never;
  "speed diagram.diameters": "diameters" | "unit" | "place";
  "speed diagram.in full": "names";
  "speed diagram.work": "unit";
  "speed diagram.drill": "unit";
  "speed diagram.cutting speed": "unit";
  "speed diagram.how to read": never;
  "speed diagram.how to read, variable": never;
  "speed diagram.example": "material" | "diameter" | "rpm" | "position";
  "speed diagram.rpm range": "range";
  "speed diagram.factor range": "from" | "to";
  "speed diagram.of the nearest": "factors";
  "speed diagram.not counted": "sources";
  "speed diagram.sources": "sources";
  "speed diagram.from memory": never;
  "speed tree.by motor": never;
  "speed tree.by treadle": never;
  "speed tree.by hand": never;
  "speed tree.spindle": never;
  "speed tree.gap": never;
  "speed tree.overlap": never;
  "speed tree.by ratio": never;
  "speed tree.measure first": never;
  "speed tree.beyond": never;
  "speed tree.turned down": never;
  "speed tree.shafts": never;
  "speed tree.one speed": never;
  "speed tree.pair": "slower" | "faster";
  "speed tree.even": "n" | "slowest" | "fastest" | "step" | "preferred";
  "speed tree.every speed": "slowest" | "fastest";
  "speed tree.variable": "slowest" | "fastest";
  "speed tree.gaps": "pairs";
  "speed tree.overlaps": "pairs";
  "speed tree.and more": "names" | "n";
  "speed tree.belts": never;
  "speed tree.loose belt": never;
  "speed tree.belt with idler": "belt";
  "speed tree.no centres": "belt";
  "speed tree.step": never;
  "speed tree.driver": never;
  "speed tree.driven": never;
  "speed tree.belt length": never;
  "speed tree.wrap": never;
  "speed tree.degrees": never;
  "speed tree.move shafts": never;
  "speed tree.minus closer": "unit";
  "speed tree.motor speed": never;
  "speed tree.only position": never;
  "speed tree.belt run open": "belt" | "centres";
  "speed tree.belt run crossed": "belt" | "centres";
  "speed tree.one serves": "apart";
  "speed tree.one does not serve": "apart" | "shortest";
  "speed tree.toothed": never;
  "speed tree.stretch not given": "shortest";
  "speed tree.cut": "length" | "percent";
  "speed tree.little wrap": never;
  "speed tree.vee": "shortest";
  "drive notes.by motor": "rpm";
  "drive notes.by treadle": "rpm";
  "drive notes.by hand": "rpm";
  "drive notes.at mains": "speed" | "hertz";
  "drive notes.crossed": "stage";
  "drive notes.slip not known": never;
  "drive notes.slip not measured": never;
  "drive notes.unloaded": "percent";
  "drive notes.faster": "percent";
  "drive notes.mean slip": "percent";
  "drive notes.slips": "slips";
  "drive notes.pulleys": "driver" | "driven";
  "drive notes.idler": never;
  "drive notes.direct": never;
  "drive notes.no chuck limit": never;
  "drive notes.chuck limit": "rpm";
  "drive notes.spindle limit": "rpm";
  "drive notes.vee line": "section" | "depth" | "source" | "other" | "otherDepth" | "most";
  "drive notes.source inch grooves": never;
  "drive notes.source iso": never;
  "drilling card.by diameter": "operation" | "tool" | "unit";
  "drilling card.by thread": "operation" | "tool";
  "drilling card.by hand": "off" | "operations";
  "drilling card.by hand, too fast": "off" | "operations";
  "drilling card.no speed": never;
  "drilling card.no drills": never;
  "drilling card.no figures": "materials";
  "drilling card.no figures here": never;
  "drilling card.too fast": never;
  "drilling card.tap by hand": never;
  "drilling card.only position": never;
  "drilling card.sizes at a cut": never;
  "drilling card.at a cut": never;
  "drilling card.on a cut": never;
  "drilling card.cut alone": never;
  "drilling card.set": never;
  "drilling card.by ratio": never;
  "drilling card.measure first": never;
  "drilling card.reading doubtful": never;
  "drilling card.black": never;
  "drilling card.more speed": never;
  "drilling card.tap stop": never;
  "drilling card.tap reversed": "rpm";
  "drilling card.tap by own speed": never;
  "drilling card.no barrel": never;
  "drilling card.depth": "wheel";
  "drilling card.whole turns": never;
  "drilling card.and": never;
  "drilling card.feeding": "material" | "wheel";
  "drilling card.drill": never;
  "drilling card.rpm": never;
  "drilling card.feed": never;
  "drilling card.count": never;
  "drilling card.at least feed": never;
  "drilling card.feeds": "sources";
  "drilling card.feeds that burn": "sources";
  "drilling card.chips burn": "material" | "end";
  "drilling card.number drill": "number";
  "drilling card.letter drill": "letter";
  "drilling card.operation turning": never;
  "drilling card.operation finish turning": never;
  "drilling card.operation facing": never;
  "drilling card.operation boring": never;
  "drilling card.operation parting": never;
  "drilling card.operation forming": never;
  "drilling card.operation knurling": never;
  "drilling card.operation threading": never;
  "drilling card.operation drilling": never;
  "drilling card.operation reaming": never;
  "drilling card.operation countersinking": never;
  "drilling card.operation tapping": never;
  "drilling card.operation threading by die": never;
  "drilling card.diameter of the work": never;
  "drilling card.outside diameter from the outside in": never;
  "drilling card.diameter of the bore": never;
  "drilling card.largest diameter under the tool": never;
  "drilling card.outside diameter of the thread": never;
  "drilling card.diameter of the drill": never;
  "drilling card.diameter of the reamer": never;
  "drilling card.largest diameter of the countersink": never;
  "hand feed.count too fast": never;
  "hand feed.fine": never;
  "hand feed.medium": never;
  "hand feed.coarse": never;
  "hand feed.feed": never;
  "hand feed.position": never;
  "hand feed.rpm": never;
  "hand feed.only position": never;
  "hand feed.not for": "sign" | "materials";
  "hand feed.turn": "travel";
  "hand feed.turn of slide": "travel";
  "hand feed.division": "division";
  "hand feed.minutes": "length";
  "hand feed.turn in": "counts";
  "hand feed.turns in": "parts" | "counts";
  "hand feed.minutes in": "minutes";
  "hand feed.quarter in": "counts";
  "hand feed.divisions in": "parts" | "counts";
  "hand feed.too fast": never;
  "hand feed.sign turn": never;
  "hand feed.sign minutes": never;
  "hand feed.sign turns": never;
  "hand feed.sign quarter": never;
  "hand feed.sign division": never;
  "hand feed.sign too fast": never;
  "hand feed.sign too quick": never;
  "hand feed.count aloud": never;
  "hand feed.max": never;
  "hand feed.beyond": never;
  "hand feed.do not use": "positions";
  "hand feed.forbidden": "position" | "rpm";
  "hand feed.turn no higher": never;
  "hand feed.measure first": never;
  "hand feed.reading doubtful": never;
  "hand feed.by ratio": never;
  "hand feed.published for": "material" | "finishing" | "roughing";
  "hand feed.published": "unit" | "feeds" | "parting" | "not" | "sources";
  "hand feed.published not": "materials";
  "hand feed.turns to counts": "parts" | "counts";
  "hand feed.1 a count": never;
  "hand feed.2 a count": never;
  "hand feed.too slow": never;
  "hand feed.1 division a count": never;
  "hand feed.count a turn": "count";
  "hand feed.count a quarter": "count";
  "hand feed.divisions a count": "count";
  "hand feed.divisions to counts": "parts" | "counts";
  "hand feed.count a division": "count";
  "dials.index": never;
  "dials.reading grows": never;
  "dials.seam butt": never;
  "dials.seam tab": never;
  "dials.turn 1": never;
  "dials.turn 2": never;
  "dials.turn 3": never;
  "dials.turn any": "turn";
  "dials.division": "division";
  "dials.upper lower": "upper" | "lower";
  "dials.on diameter": never;
  "dials.on travel": never;
  "dials.revision": "revision";
  "dials.a turn": "feed";
  "dials.off over": "doubt" | "travel";
  "dials.too much over": "error" | "travel";
  "dials.too little over": "error" | "travel";
  "dials.upper scale": "scale";
  "dials.lower scale": "scale";
  "dials.last short": "last";
  "dials.last long": "last";
  "dials.rows": "rows";
  "dials.sense assumed": never;
  "dials.once round": never;
  "dials.nothing adds up": never;
  "dials.closes exactly": never;
  "dials.closes within": never;
  "dials.does not close": never;
  "dials.reads too much": "turn" | "error" | "travel";
  "dials.reads too little": "turn" | "error" | "travel";
  "dials.feed not given": "names";
  "dials.measured only": never;
  "dials.wave": never;
  "dials.vernier of over": "parts" | "spans" | "count";
  "dials.vernier wrong": "from";
  "dials.finer than known": "travel";
  "dials.blur": "apart";
  "dials.close": "apart";
  "dials.too large": never;
  "dials.in pieces": "n";
  "dials.cramped": "n" | "height";
  "dials.read from": "far";
  "dials.cutting": never;
  "dials.round": "over";
  "dials.centre": never;
  "dials.measure": never;
  "dials.no room": never;
  "dials.grain": never;
  "dials.copy": "copy";
  "dials.spare copy": "copy";
  "dials.piece of": "piece" | "pieces";
  "dials.not on it": "words";
  "dials.one division": never;
  "dials.one of": "divisions";
  "dials.between cuts": never;
  "dials.to tab": never;
  "dials.with tab": never;
  "dials.across": never;
  "dials.hole": never;
  "dials.along arc": never;
  "dials.corner to corner": never;
  "dials.across widest": never;
  "dials.radii": never;
  "dials.error over": "travel";
  "dials.begins again": never;
  "dials.in place": "names";
  "dials.many in place": "n" | "name";
  "dials.index of": "name";
  "dials.vernier": "count";
  "dials.vernier of": "name" | "count";
  "dials.vernier zero": never;
  "dials.blank": "name";
  "dials.closes within doubt": "error";
  "dials.short division": "short" | "division" | "width";
  "dials.long division": "last" | "division";
  "dials.starts again": "turn";
  "dials.short division blurs": never;
  "dials.rows close exactly": "n" | "divisions";
  "dials.rows close within doubt": "n" | "error";
  "dials.rows do not close": "most" | "n" | "error";
  "dials.rows not reached": "n";
  "dials.travel not stated": "travel";
  "dials.of travel": "travel";
  "dials.on the dial": "length";
  "dials.no travel stated": "travel";
  "dials.feed doubt": "off" | "over";
  "dials.too many marks": "marks";
  "dials.more than a turn": never;
  "dials.marks blur": "apart";
  "dials.marks close": "apart";
  "dials.row too low": "height";
  "dials.reads in in": never;
  "dials.reads in mm": never;
  "dials.under": "least";
  "dials.cutting without arrow": never;
  "dial choices.even": never;
  "dial choices.true": never;
  "dial choices.rows": "n";
  "dial choices.marked chosen": never;
  "dial choices.marked as asked": never;
  "dial choices.closes": never;
  "dial choices.closes within": never;
  "dial choices.begins again": "size";
  "dial choices.begins again, long": "size";
  "dial choices.each turn": "out";
  "dial choices.over travel": "out" | "travel";
  "dial choices.apart": "size";
  "dial choices.apart close": "size";
  "dial choices.apart blur": "size";
  "dial choices.row low": "size";
  "dial choices.too many": never;
  "dial choices.more than a turn": never;
  "dial choices.signs": never;
  "vernier.legend": "count";
  "vernier.reads": "count";
  "vernier.over divisions": "parts" | "spans";
  "vernier.finer": "travel";
  "vernier.stick": never;
  "vernier.stick at index": never;
  "vernier.caption": "wheel";
  "vernier.past left": "main" | "mark";
  "vernier.past right": "main" | "mark";
  "vernier.true size": never;
  "vernier.enlarged": "times";
  "vernier.smaller": never;
  "scales.called": "name";
  "scales.no feed": "wheel";
  "scales.in pieces": "n";
  "scales.blur": "apart";
  "scales.part of turn": "part" | "length";
  "scales.from mark to end": never;
  "angle scales.called swivel": "name";
  "angle scales.called plate": "name";
  "angle scales.too large": "remedy";
  "angle scales.smaller plate": never;
  "angle scales.smaller scale": never;
  "angle scales.way clockwise": never;
  "angle scales.way anticlockwise": never;
  "angle scales.small at chuck end": never;
  "angle scales.small at free end": never;
  "angle scales.plate": "off";
  "angle scales.from 0 left": "sense";
  "angle scales.from 0 right": "sense";
  "angle scales.from 0 left, tapers": "sense" | "small";
  "angle scales.from 0 right, tapers": "sense" | "small";
  "angle scales.seen": never;
  "angle scales.turns": never;
  "angle scales.fixed": never;
  "angle scales.bare": "radius";
  "angle scales.prove": never;
  "angle scales.side left": never;
  "angle scales.side right": never;
  "angle scales.radius": never;
  "angle scales.range": never;
  "angle scales.vernier of": "name" | "minutes";
  "angle scales.read the half": never;
  "angle scales.vernier too long": "parts";
  "start readings.turn reads": "length";
  "start readings.turn reads diameter": "length";
  "start readings.add": never;
  "start readings.turn": never;
  "start readings.begins at": never;
  "start readings.rows": "rows" | "division" | "cost";
  "start readings.rows too low": "rows" | "division" | "cost" | "width" | "column";
  "start readings.no rows": "column";
  "start readings.rows exact": never;
  "start readings.rows out": "each" | "over" | "travel";
  "start readings.come round": "division";
  "start readings.turns": never;
  "start readings.divisions": never;
  "start readings.out by": never;
  "start readings.exact": never;
  "start readings.under": "least";
  "start readings.gears": never;
  "start readings.on wheel": never;
  "start readings.on dial": never;
  "start readings.ratio": never;
  "start readings.dial turn": never;
  "start readings.dial turn out": never;
  "start readings.within": never;
  "start readings.idler": never;
  "start readings.no gears": never;
  "start readings.no pair": never;
  "start readings.closes exactly": "n" | "divisions";
  "start readings.closes": "n" | "divisions" | "out";
  "ring cutting.one row": "wheel" | "row" | "rows";
  "ring cutting.marks": "n" | "size";
  "ring cutting.last": "last" | "division";
  "ring cutting.stamped": "figure" | "value";
  "ring cutting.lengths": "long" | "middle" | "short";
  "ring cutting.simple": "ratio" | "turns" | "ways";
  "ring cutting.not simple": "ratio" | "turns";
  "ring cutting.holes": "holes" | "circle";
  "ring cutting.turns and holes": "n" | "holes" | "circle";
  "ring cutting.or": never;
  "ring cutting.compound exact forward": "first" | "second" | "round";
  "ring cutting.compound exact back": "first" | "second" | "round";
  "ring cutting.compound forward": "first" | "second" | "round" | "angle" | "reading";
  "ring cutting.compound back": "first" | "second" | "round" | "angle" | "reading";
  "ring cutting.round": "divisions";
  "ring cutting.differential with": "holes" | "drivers" | "driven";
  "ring cutting.differential against": "holes" | "drivers" | "driven";
  "ring cutting.and": "one" | "other";
  "ring cutting.nearest": "circle" | "angle" | "reading";
  "ring cutting.gear": "teeth";
  "ring cutting.gear step": "teeth" | "step";
  "ring cutting.gear detents": "n" | "teeth" | "detents";
  "ring cutting.gear pair": "first" | "second" | "one" | "other";
  "ring cutting.teeth forward": "n";
  "ring cutting.teeth back": "n";
  "ring cutting.give dividing": never;
  "ring cutting.no gear": never;
  "ring cutting.mark": never;
  "ring cutting.angle": never;
  "ring cutting.turns": never;
  "ring cutting.of circle": "circle";
  "ring cutting.stamp": never;
  "engraving.along": "title" | "length";
  "engraving.rotary": "length";
  "engraving.no diameter": never;
  "turns.within a turn": never;
  "turns.nothing": never;
  "turns.not here": "wheel" | "why";
  "turns.feed readings": "feed";
  "turns.feed stated": "feed";
  "turns.feed screw": "feed";
  "turns.feed rack": "feed";
  "turns.reads travel": never;
  "turns.reads diameter": never;
  "turns.division": "size";
  "turns.lost motion": "length" | "part";
  "turns.lost motion most": "length" | "part";
  "turns.maker": "length";
  "turns.old dial travel": "length";
  "turns.old dial diameter": "length";
  "turns.unit of the old dial travel": "unit";
  "turns.unit of the old dial diameter": "unit";
  "turns.old dial unknown": never;
  "turns.holds": "parts";
  "turns.holds feed": never;
  "turns.holds scatter": never;
  "turns.holds tenth": never;
  "turns.old dial on top": never;
  "turns.one side": never;
  "turns.one side unknown": never;
  "turns.beyond": "read" | "travel";
  "turns.your distances": never;
  "turns.of travel": never;
  "turns.of diameter": never;
  "turns.turns": never;
  "turns.dial": never;
  "turns.row": never;
  "turns.old dial": never;
  "turns.reads in travel": never;
  "turns.reads in diameter": never;
  "turns.uncorrected": never;
  "turns.whole turns": never;
  "turns.whole": never;
  "turns.zero is": never;
  "turns.add": never;
  "turns.maker out": never;
  "turns.out by travel": never;
  "turns.out by diameter": never;
  "turns.on diameter": never;
  "turns.corrected": never;
  "turns.counted": "unit";
  "turns.counted bare": never;
  "turns.begun": never;
  "turns.rule from to": "from" | "to";
  "turns.on row": "turns" | "figure" | "row";
  "turns.turns alone": "turns";
  "turns.no whole turn, then": "figure" | "unit";
  "turns.turns, then": "n" | "figure" | "unit";
  "turns.no whole turn, then in row": "figure" | "unit" | "row";
  "turns.turns, then in row": "n" | "figure" | "unit" | "row";
  "turns.in row": "setting" | "row";
  "stops.touch off": "zero";
  "stops.zero": never;
  "stops.mark": never;
  "stops.write down": never;
  "stops.zero or write down": never;
  "stops.mark too": never;
  "stops.wind": never;
  "stops.wind to sum": never;
  "stops.wind to reading or sum": never;
  "stops.lock": never;
  "stops.lock drill": never;
  "stops.next part": never;
  "stops.first one": never;
  "stops.none": never;
  "stops.not set": "stop" | "why";
  "stops.no such wheel": never;
  "stops.stop": never;
  "stops.parts": never;
  "stops.length": never;
  "stops.wheel": never;
  "stops.turns": never;
  "stops.dial reads": never;
  "stops.dial goes on": never;
  "stops.dial reads or goes on": never;
  "stops.counts in row": "counts" | "row";
  "stops.turns in row": "turns" | "figure" | "row";
  "stops.by stop": never;
  "stops.by dial": never;
  "stops.lost motion": never;
  "stops.first part": never;
  "stops.wanted": never;
  "stops.held by": never;
  "stops.both": never;
  "stops.stop alone": never;
  "stops.neither": never;
  "stops.not the dial": never;
  "stops.not measured": never;
  "stops.beyond": never;
  "stops.no dial means": never;
  "stops.sum means": "turns";
  "stops.alike means": never;
  "stops.alike unknown": never;
  "stops.lost motion means": never;
  "stops.lost motion unknown": never;
  "stops.first part means": never;
  "stops.unknown means": never;
  "stops.wanted means": never;
  "stops.held by means": never;
  "stops.stop alone means": never;
  "stops.neither means": never;
  "stops.measure each": never;
  "stops.measure each means": never;
  "stops.first part off": "stops";
  "stops.beyond means": never;
  "stops.corrected": "wheel";
  "stops.begun": never;
  "stops.by the rule": never;
  "stops.turns alone": never;
  "stops.turns and reading": "unit";
  "stops.turns and sum": "unit" | "turn";
  "stops.between": never;
  "stops.blocks": never;
  "stops.blocks how": never;
  "stops.spindle": never;
  "stops.spindle 1": "off";
  "stops.spindle 2": never;
  "stops.spindle 3": never;
  "stops.spindle 4": never;
  "stops.spindle 5": never;
  "tapers.seen from above": never;
  "tapers.free end small": never;
  "tapers.chuck end small": never;
  "tapers.top slide clockwise": never;
  "tapers.top slide anticlockwise": never;
  "tapers.headstock clockwise": never;
  "tapers.headstock anticlockwise": never;
  "tapers.yours": never;
  "tapers.cut": never;
  "tapers.usual": never;
  "tapers.one in": "n";
  "tapers.lathe centre": never;
  "tapers.taper pin": never;
  "tapers.taper": never;
  "tapers.ratio": never;
  "tapers.per foot": never;
  "tapers.in per foot": never;
  "tapers.per length": "unit" | "length";
  "tapers.included": never;
  "tapers.swing": never;
  "tapers.indicator": never;
  "tapers.turns of": "wheel";
  "tapers.for rise": never;
  "tapers.sine bar": "length";
  "tapers.wrong": never;
  "tapers.length": never;
  "tapers.sizes": never;
  "tapers.along": never;
  "tapers.goes in": never;
  "tapers.pins": "length";
  "tapers.over": never;
  "tapers.of work": "unit" | "length";
  "tapers.settings": never;
  "tapers.too long": "travel";
  "tapers.too steep": never;
  "tapers.dial from 0": never;
  "tapers.dial goes on": "turn";
  "tapers.how cut": never;
  "tapers.how": never;
  "tapers.sources": never;
  "tapers.gauges": never;
  "tapers.cut gauge": never;
  "tapers.gauge": "name" | "angle";
  "tapers.gauge alone": "angle";
  "tapers.gauge rises": "name" | "rise" | "length";
  "tapers.no gauge": "names" | "least";
  "tapers.top slide, swing clockwise": never;
  "tapers.top slide, swing anticlockwise": never;
  "tapers.headstock, swing clockwise": never;
  "tapers.headstock, swing anticlockwise": never;
  "threads.left out": "n" | "largest";
  "threads.number drill": "number";
  "threads.series metric coarse": never;
  "threads.series metric fine": never;
  "threads.series UNC": never;
  "threads.series UNF": never;
  "threads.series BA": never;
  "threads.series BSW": never;
  "threads.series BSF": never;
  "threads.series ME": never;
  "threads.thread": never;
  "threads.size": never;
  "threads.pitch": never;
  "threads.drill for": "percent";
  "threads.drill": never;
  "threads.full": never;
  "threads.rod": never;
  "threads.turns": never;
  "threads.tight": "most" | "percent";
  "threads.next drill": "percent";
  "threads.from memory": never;
  "threads.how": "percent" | "share";
  "threads.nearest in inches": never;
  "threads.sources": "sources";
  "threads.source DIN 76": never;
  "threads.source library": never;
  "threads.source chart": never;
  "threads.source memory": never;
  "threads.source BA": never;
  "threads.source Whitworth": never;
  "plan.knife tool": never;
  "plan.boring tool": never;
  "plan.face off": "depth";
  "plan.face to length": "length";
  "plan.face with slide back": "wheel" | "facing";
  "plan.face with slide close": "wheel" | "facing";
  "plan.face and lock": never;
  "plan.face counts": never;
  "plan.face measured": never;
  "plan.face measured, reckoned": "times" | "counted";
  "plan.turn long": "size" | "length";
  "plan.turn from to": "size" | "from" | "to";
  "plan.shoulder long": "size" | "length";
  "plan.shoulder from to": "size" | "from" | "to";
  "plan.bore deep": "size" | "depth";
  "plan.bore from to": "size" | "from" | "to";
  "plan.outward": never;
  "plan.inward": never;
  "plan.size with limits": "size" | "least" | "most";
  "plan.come to, lost motion unknown": "sense";
  "plan.come to, whole turn back": "sense" | "lost";
  "plan.come to": "sense" | "lost";
  "plan.shoulder edge": never;
  "plan.bore first cuts": never;
  "plan.bore dial backwards": never;
  "plan.blade": "width";
  "plan.part off": "length";
  "plan.part note": "diameter" | "wet";
  "plan.groove": "width" | "size" | "from" | "to";
  "plan.groove note": "wet";
  "plan.countersink": never;
  "plan.boring tool at 45°": never;
  "plan.45° tool": never;
  "plan.edge at the end": never;
  "plan.edge at": "at";
  "plan.chamfer in bore": "size" | "edge";
  "plan.chamfer": "size" | "edge";
  "plan.countersink note": "mouth";
  "plan.chamfer towards chuck": never;
  "plan.chamfer from chuck": never;
  "plan.pinching knurling tool": never;
  "plan.knurling tool": never;
  "plan.knurl from to": "pitch" | "from" | "to";
  "plan.knurl long": "pitch" | "length";
  "plan.knurl places, begin": "at";
  "plan.knurl places": never;
  "plan.knurl rise": "rise";
  "plan.knurl oil": never;
  "plan.no tool": never;
  "plan.taper tool": never;
  "plan.taper": "large" | "small" | "length" | "towards";
  "plan.taper from": "large" | "small" | "length" | "at" | "towards";
  "plan.thin towards the end": never;
  "plan.thin towards the chuck": never;
  "plan.taper back": never;
  "plan.taper prove": never;
  "plan.tip from face": "at";
  "plan.tip at face": never;
  "plan.clockwise": never;
  "plan.anticlockwise": never;
  "plan.towards you": never;
  "plan.away from you": never;
  "plan.swing top slide": "sense" | "degrees" | "begin";
  "plan.swing headstock": "sense" | "degrees" | "begin";
  "plan.set tailstock over": "over" | "towards" | "between" | "begin";
  "plan.clamped": never;
  "plan.holes alike": "what" | "n";
  "plan.some holes": "what" | "n" | "of";
  "plan.named holes": "n" | "what" | "name";
  "plan.some named holes": "what" | "n" | "of" | "name";
  "plan.other holes": "n" | "what";
  "plan.holes in turn": "n";
  "plan.holes on the axis": "n";
  "plan.centre drill": "pilot";
  "plan.centre drill tool": "pilot";
  "plan.centre drill note": "mouth" | "depth";
  "plan.drill": "size" | "depth";
  "plan.drill named": "name" | "size";
  "plan.ream": "size" | "depth";
  "plan.twist drill": never;
  "plan.twist drills": never;
  "plan.reamer": never;
  "plan.by hand, no reverse": "off";
  "plan.drills in turn": "drills";
  "plan.clear drill": never;
  "plan.drill depth counts": "tip";
  "plan.ream note": "wet";
  "plan.tap hole": "share" | "hole";
  "plan.tap hole gives": "hole" | "share";
  "plan.tap edge": "size";
  "plan.tap order": "mark" | "lead";
  "plan.die rod": "rod" | "now" | "core";
  "plan.die shoulder": "room";
  "plan.tap": "thread" | "depth";
  "plan.die": "thread" | "depth";
  "plan.tap in the drill": never;
  "plan.tap in the tailstock": never;
  "plan.die holder": never;
  "plan.thread by hand": "off";
  "plan.tap turns": "turns" | "length" | "lead";
  "plan.thread turns behind": "counted" | "begins";
  "plan.thread turns": "turns" | "length";
  "plan.thread how": "begun" | "halfTurns" | "half" | "wet";
  "plan.thread how drill": "begun" | "halfTurns" | "half" | "wet";
  "plan.tap binds": never;
  "plan.die binds": never;
  "plan.in the chuck": never;
  "plan.in the chuck by": "size";
  "plan.in chuck and centre": "chuck";
  "plan.between greased centres": never;
  "plan.few mm": never;
  "plan.few in": never;
  "plan.turn round": "out" | "by";
  "plan.hold anew": "out" | "by";
  "plan.jaws bridge": "from";
  "plan.hold safely": "still";
  "plan.carrier sheet": never;
  "plan.jaws sheet": "out";
  "plan.centre greased": never;
  "plan.centres in line": never;
  "plan.turn round batch": never;
  "plan.turn round stop": never;
  "plan.turn round lengths": never;
  "plan.to wet": "what";
  "plan.drill coarsely": "material" | "feed" | "sources";
  "plan.this cut": "rule" | "feed";
  "plan.ream coarsely": "rule";
  "plan.plunge coarsely": never;
  "plan.cut coarsely": never;
  "plan.start slides drill": never;
  "plan.start slides": never;
  "plan.start held drill": never;
  "plan.start held": never;
  "plan.still motor": never;
  "plan.still treadle": never;
  "plan.still hand": never;
  "plan.start isolated": "still";
  "plan.start tool": never;
  "plan.start stops": never;
  "plan.start wet": "what";
  "plan.start belts": never;
  "plan.start clear": never;
  "plan.belt slip": never;
  "plan.chuck limit unknown": never;
  "plan.zero": "wheel" | "touch" | "set";
  "plan.zero written down": "label";
  "plan.zero marked": never;
  "plan.zero set": never;
  "plan.lay the rule": "wheel" | "unit" | "where";
  "plan.touch diameter": "size";
  "plan.touch bore": "size";
  "plan.touch face": never;
  "plan.touch end": never;
  "plan.touch face with blade": never;
  "plan.touch end with blade": never;
  "plan.touch raw end": never;
  "plan.touch edge": never;
  "plan.touch first thread": never;
  "plan.touch mouth": never;
  "plan.touch mouth as it is": never;
  "plan.touch begin": never;
  "plan.touch tip": never;
  "plan.readings from": "wheel" | "zero";
  "plan.readings from, step": "wheel" | "zero" | "number";
  "plan.from diameter": "size";
  "plan.from bore": "size";
  "plan.from face": never;
  "plan.from end": never;
  "plan.from raw end": never;
  "plan.from edge": never;
  "plan.from mouth": never;
  "plan.from first thread": never;
  "plan.from begin": never;
  "plan.from tip": never;
  "plan.wind back": "by" | "travel";
  "plan.other diameter written": "size";
  "plan.other diameter written, reckoned": "size" | "times" | "counted";
  "plan.other diameter set": "size";
  "plan.other diameter set, reckoned": "size" | "times" | "counted";
  "plan.other diameter, turns": "size" | "times" | "counted";
  "plan.other bore, turns": "size" | "times" | "counted";
  "plan.back": "turns";
  "plan.no dial": never;
  "plan.sums on fixed dials": "turns";
  "plan.comes out": "sizes";
  "plan.promised diameter": "size";
  "plan.promised length": "size";
  "plan.promised by the rule": never;
  "plan.promised depth": "size";
  "plan.promised small end": "size";
  "plan.promised large end": "size";
  "plan.more than the tolerance": never;
  "plan.worst adds": "touch" | "gauge";
  "plan.worst adds, depth": "entered";
  "plan.parts alike to": "to";
  "plan.feed of a drill": "drill" | "count";
  "plan.feed by": "wheel" | "count";
  "plan.minutes": "n";
  "plan.hours": "hours";
  "plan.within": "least" | "most";
  "plan.column done": never;
  "plan.column measured": never;
  "plan.corrected": never;
  "plan.measured before": never;
  "plan.measured before, promised": never;
  "plan.corrected movement": "distance" | "wheel" | "within";
  "plan.corrected movement, step": "distance" | "wheel" | "within" | "number";
  "plan.column rule": never;
  "plan.elsewhere": never;
  "plan.by the rule": never;
  "plan.column so that it reads": never;
  "plan.column and": never;
  "plan.set by measuring": never;
  "plan.feed in at, number": "number";
  "plan.go on to, number": "number";
  "plan.place begin": never;
  "plan.place stop": never;
  "plan.place plunge": never;
  "plan.each time in to": never;
  "plan.place depth": never;
  "plan.drill to": "diameter" | "depth";
  "plan.rough cut": "number";
  "plan.once more": never;
  "plan.last cut": never;
  "plan.by hand": never;
  "plan.no speed known": never;
  "plan.do not run": never;
  "plan.set the motor": never;
  "plan.as fast as a hand": never;
  "plan.belt kept": "step";
  "plan.slower than it bears": never;
  "plan.held by a limit": never;
  "plan.locked, written down": "wheel" | "label";
  "plan.locked, marked": "wheel";
  "plan.locked, set": "wheel";
  "plan.sum bore": "diameter" | "unit";
  "plan.sum outside": "diameter" | "unit";
  "plan.go on": never;
  "plan.go on, reckoned": "times" | "counted";
  "plan.on the dial": "unit";
  "plan.in turns": never;
  "plan.measure the others too": never;
  "plan.dial at the right size": never;
  "plan.mend sum": never;
  "plan.mend zero": "reading";
  "plan.mend zero, others too": "reading";
  "plan.mend zero, by the rule": never;
  "plan.mend zero, worn": "reading";
  "plan.others go straight": never;
  "plan.done on part": never;
  "plan.done on part, more": "from" | "to";
  "plan.drawn without": "steps";
  "plan.readings are": never;
  "plan.turns are whole": never;
  "plan.turns are": never;
  "plan.counts are": never;
  "plan.readings on old dials": never;
  "plan.belt moved sign": "off";
  "plan.for several steps": never;
  "plan.see for several steps": "heading" | "signs";
  "plan.step of the file": "inFile";
  "plan.row": "row";
  "plan.column turns": never;
  "plan.column dial": never;
  "plan.before the first chip": never;
  "plan.refused all the same": never;
  "plan.refused all the same, for": "steps";
  "plan.bar": "diameter";
  "plan.tube": "diameter" | "bore";
  "plan.bar long": "length";
  "plan.bar out": "out";
  "plan.bar held chuck and centre": never;
  "plan.bar held between centres": never;
  "plan.belts called": "key";
  "plan.bar against a stop": never;
  "plan.bar turned against a stop": never;
  "plan.parts": "n";
  "plan.step goes on": never;
  "plan.steps": "n" | "steps";
  "plan.reordered": never;
  "plan.nothing against": never;
  "plan.refused": never;
  "plan.take care": never;
  "plan.tools in the post": "count" | "tools";
  "plan.one tool": never;
  "plan.swung on a bar": "steps";
  "plan.swung": "steps";
  "plan.others touched anew": never;
  "plan.others straight": never;
  "plan.batch by operation": never;
  "plan.batch to turning round": never;
  "plan.batch part by part": never;
  "plan.parts alike": "count";
  "plan.clamp against stops": never;
  "plan.length zeros fresh": never;
  "plan.bar drawn out": "fresh";
  "plan.blanks against stop": never;
  "plan.blanks without stop": "fresh";
  "plan.turned round, stop": never;
  "plan.turned round, same": never;
  "plan.between centres lengths": never;
  "plan.way part": never;
  "plan.way operation": never;
  "plan.way one": never;
  "plan.column way of working": never;
  "plan.column belt changes": never;
  "plan.column under the tool": never;
  "plan.column minutes": never;
  "plan.column handling": never;
  "plan.column tools and": never;
  "plan.column holding": never;
  "plan.column belts": never;
  "plan.column all": never;
  "plan.belts and time": never;
  "plan.belt stays": never;
  "plan.belt changes": "n" | "off";
  "plan.reckoned": "belt" | "tool" | "part" | "pass" | "measure";
  "plan.reckoned holes": "hole";
  "plan.uncounted": "n";
  "plan.trial tells": never;
  "plan.slower": "n" | "steps" | "position" | "rpm" | "more";
  "plan.slower, less in all": "n" | "steps" | "position" | "rpm" | "more";
  "plan.slower, no time saved": "n" | "steps" | "position" | "rpm" | "more";
  "plan.column part": never;
  "plan.measured parts": never;
  "plan.measured parts, more": "last";
  "plan.drawing holes": "n";
  "plan.drawing named holes": "n" | "name";
  "plan.drawing over": "from" | "to";
  "plan.drawing through": never;
  "plan.drawing deep": "depth";
  "plan.drawing from to": "from" | "to";
  "plan.drawing wide": "size" | "width";
  "plan.drawing at": "at";
  "plan.drawing taper": "large" | "small";
  "plan.drawing knurl": "pitch";
  "plan.drawing centre": "pilot";
  "plan.drawing more": "count";
  "plan.drawing face": never;
  "plan.drawing face to": "length";
  "plan.drawing parted": "length";
  "plan.drawing at the other end": never;
  "plan.drawing from end to end": "length";
  "plan.drawing from first": "length";
  "plan.drawing from other": "length";
  "plan.drawing scale": "ratio";
  "plan.drawing scale mm": "ratio";
  "plan.drawing scale in": "ratio";
  "plan.belt back": "position" | "off" | "last";
  "plan findings.do not file": "material";
  "plan findings.finish by hand": never;
  "plan findings.usually bears": "firmness";
  "plan findings.light": never;
  "plan findings.firm": never;
  "plan findings.no stop behind": never;
  "plan findings.no stop behind remedy": never;
  "plan findings.no blanks": never;
  "plan findings.no blanks remedy": never;
  "plan findings.loose": never;
  "plan findings.loose remedy": never;
  "plan findings.turned, length unknown": never;
  "plan findings.turned, length unknown remedy": never;
  "plan findings.nothing in the jaws": "out" | "long";
  "plan findings.less out": never;
  "plan findings.jaws on a step": "diameter" | "length" | "thicker";
  "plan findings.more out or other end": never;
  "plan findings.sound grip": "out" | "diameter" | "length";
  "plan findings.jaws before a step": "diameter" | "length" | "thicker";
  "plan findings.jaws clear inside": never;
  "plan findings.jaws hold too little": "length" | "diameter";
  "plan findings.less out or other end": never;
  "plan findings.long lever": "length" | "out";
  "plan findings.jaws on a cone": "diameter";
  "plan findings.little grip": "length" | "diameter" | "least";
  "plan findings.little grip remedy": never;
  "plan findings.thin under jaws": "wall" | "bore";
  "plan findings.thin under jaws remedy": never;
  "plan findings.jaws on thread": "thread";
  "plan findings.jaws on knurl": never;
  "plan findings.jaws on surface remedy": never;
  "plan findings.into the jaws": "to" | "at";
  "plan findings.near the jaws": "to" | "at" | "clear";
  "plan findings.into the driver": "to" | "at";
  "plan findings.near the driver": "to" | "at" | "clear";
  "plan findings.into the jaws remedy": "more";
  "plan findings.before the centre": never;
  "plan findings.centre in the way": never;
  "plan findings.parts at a centre": never;
  "plan findings.parts at a centre remedy": never;
  "plan findings.into the centre": "size" | "hole";
  "plan findings.into the centre remedy": never;
  "plan findings.near the centre": "size" | "hole";
  "plan findings.near the centre remedy": never;
  "plan findings.no centre seat": never;
  "plan findings.no centre seat remedy": never;
  "plan findings.no centre hole, other": never;
  "plan findings.no centre hole, free": never;
  "plan findings.no centre holes": never;
  "plan findings.no centre hole remedy": never;
  "plan findings.set over, chuck": never;
  "plan findings.set over, chuck and centre": never;
  "plan findings.set over remedy": never;
  "plan findings.headstock swung away": never;
  "plan findings.headstock swung away remedy": never;
  "plan findings.thick": "least" | "most";
  "plan findings.whips": "times";
  "plan findings.chatters": "times";
  "plan findings.slender, steady": "why";
  "plan findings.slender, turn short": "why";
  "plan findings.slender, draw out": "why";
  "plan findings.parts far out": "distance";
  "plan findings.parts far out remedy": never;
  "plan findings.beyond travel": "travel" | "wheel" | "has";
  "plan findings.beyond travel remedy, barrel": never;
  "plan findings.beyond travel remedy": never;
  "plan findings.no wheel": never;
  "plan findings.no wheel remedy, readings": never;
  "plan findings.no wheel remedy": never;
  "plan findings.no wheel remedy, face": never;
  "plan findings.too many cuts": "most" | "cut";
  "plan findings.too many cuts remedy": never;
  "plan findings.finer than the dial": "tolerance" | "gives";
  "plan findings.finer than at once": "doubt" | "margin";
  "plan findings.finer than the dial remedy": never;
  "plan findings.finer than the slide": "tolerance" | "holds";
  "plan findings.finer than the reading": "doubt" | "margin";
  "plan findings.finer than the reading, feed unknown": "doubt" | "margin";
  "plan findings.finer than the reading, old dial": "doubt" | "margin";
  "plan findings.finer than the reading, no dial": "doubt" | "margin";
  "plan findings.finer than the reading, worn and no dial": "doubt" | "margin";
  "plan findings.measure and correct": "doubt";
  "plan findings.beyond the drill limit": "diameter" | "limit";
  "plan findings.beyond the drill limit remedy": never;
  "plan findings.knurl presses": never;
  "plan findings.knurl presses remedy": never;
  "plan findings.headstock does not swivel": never;
  "plan findings.headstock does not swivel remedy": never;
  "plan findings.wide blade": "blade" | "most";
  "plan findings.wide blade remedy": never;
  "plan findings.no drive": never;
  "plan findings.no drive remedy": never;
  "plan findings.no speed": "material" | "tool";
  "plan findings.no speed remedy": never;
  "plan findings.fast": "rpm" | "diameter";
  "plan findings.fast remedy": never;
  "plan findings.too fine": "material";
  "plan findings.do not run": never;
  "plan findings.too fast": "slowest" | "diameter" | "most";
  "plan findings.too fast to knurl": "slowest" | "most";
  "plan findings.too fast for it": "slowest" | "most";
  "plan findings.beyond limit": "diameter" | "most" | "held" | "limit";
  "plan findings.chuck limit": never;
  "plan findings.spindle limit": never;
  "plan findings.too fast to part remedy": never;
  "plan findings.too fast to knurl remedy": never;
  "plan findings.too fast to chamfer remedy": never;
  "plan findings.too fast remedy": never;
  "plan findings.cuts air, face": never;
  "plan findings.cuts air, hole": "size";
  "plan findings.cuts air": "size";
  "plan findings.cuts air remedy": never;
  "plan findings.thicker than said": "said" | "there";
  "plan findings.leave from out": never;
  "plan findings.thinner than said": "said" | "there";
  "plan findings.thinner than said remedy": never;
  "plan findings.beyond the stock": "large" | "there";
  "plan findings.no stock": "large";
  "plan findings.beyond the stock remedy": never;
  "plan findings.no metal": "at";
  "plan findings.no metal remedy": never;
  "plan findings.wider than the knurl": "wheel" | "length";
  "plan findings.wider than the knurl remedy": never;
  "plan findings.knurls unevenly": never;
  "plan findings.knurls unevenly remedy": never;
  "plan findings.other diameter": "said" | "there";
  "plan findings.other diameter remedy": never;
  "plan findings.face, length unknown": never;
  "plan findings.face, length unknown remedy": never;
  "plan findings.behind a collar": "at" | "collar";
  "plan findings.behind a collar remedy": never;
  "plan findings.through the back": "to" | "long";
  "plan findings.through the back, stop": never;
  "plan findings.through the back remedy": never;
  "plan findings.hole is": "hole";
  "plan findings.none made": never;
  "plan findings.drill wider than work": "size" | "work";
  "plan findings.drill wider than work remedy": never;
  "plan findings.no start": never;
  "plan findings.no start remedy": never;
  "plan findings.bore wider than work": "size" | "work";
  "plan findings.bore wider than work remedy": never;
  "plan findings.bore without hole": never;
  "plan findings.bore deeper than hole": "depth";
  "plan findings.bore without hole remedy": never;
  "plan findings.narrower than said": "said" | "there";
  "plan findings.slender boring tool": "depth" | "hole";
  "plan findings.slender boring tool remedy": never;
  "plan findings.ream, hole": "size" | "found";
  "plan findings.ream, hole for its depth": "size" | "found";
  "plan findings.not so deep": never;
  "plan findings.ream, hole remedy": never;
  "plan findings.ream, short below": "room";
  "plan findings.ream, short below remedy": "more";
  "plan findings.much to ream": "off" | "hole" | "most";
  "plan findings.much to ream remedy": "size";
  "plan findings.no edge of hole": never;
  "plan findings.no edge of hole remedy": never;
  "plan findings.no edge": "at";
  "plan findings.no edge remedy": never;
  "plan findings.larger than the edge": "size" | "height";
  "plan findings.larger than the edge remedy": "height";
  "plan findings.slender blade": "deep" | "blade" | "times";
  "plan findings.slender blade remedy": "blade";
  "plan findings.too deep": "cut" | "most" | "why";
  "plan findings.too deep remedy": "most";
  "plan findings.rubs": "finish";
  "plan findings.rubs remedy": "least";
  "plan findings.through the wall": "at";
  "plan findings.thin wall": "wall" | "at";
  "plan findings.thin wall refused": "least";
  "plan findings.thin wall remedy": never;
  "plan findings.tap deeper than hole": "depth";
  "plan findings.the thread": "name";
  "plan findings.the knurl": never;
  "plan findings.spoils": "made";
  "plan findings.spoils remedy": "made";
  "plan findings.tap, no hole": "least" | "most";
  "plan findings.tap, no hole remedy": never;
  "plan findings.tap, wrong hole": "least" | "most" | "hole";
  "plan findings.tap, wrong hole remedy": "hole";
  "plan findings.tap, hole for share": "hole" | "share";
  "plan findings.tight hole": "hole" | "share";
  "plan findings.more holes": "n" | "count";
  "plan findings.more holes remedy": never;
  "plan findings.loose hole": "hole" | "share";
  "plan findings.thread as wide as work": "size";
  "plan findings.thin wall round thread": "wall";
  "plan findings.thin wall round thread remedy": never;
  "plan findings.tap on the floor": "room" | "depth" | "lead";
  "plan findings.tap on the floor remedy": "depth";
  "plan findings.tap, short below": "room" | "depth" | "source" | "asks";
  "plan findings.tap, short below remedy": "depth";
  "plan findings.wrong rod": "rod" | "length" | "work";
  "plan findings.wrong rod remedy": "rod";
  "plan findings.thin wall under thread": "wall" | "bore";
  "plan findings.thin wall under thread remedy": never;
  "plan findings.die before shoulder remedy": "before" | "width" | "floor" | "source";
  "plan findings.die on the shoulder": "room" | "lead";
  "plan findings.short run-out": "room";
  "plan findings.short run-out remedy": "remedy";
  "plan findings.slender in chuck": "length" | "diameter" | "ratio";
  "plan findings.slender between": "length" | "diameter" | "ratio";
  "plan findings.slender shape in chuck": "length" | "diameter" | "ratio";
  "plan findings.slender shape between": "length" | "diameter" | "ratio";
  "student.dial not proved": never;
  "student.slide not even": "most";
  "student.slide out over": "most" | "travel";
  "student.never key in chuck": never;
  "student.never gloves": never;
  "student.never long hair": never;
  "student.never without eye cover": never;
  "student.never touch chips": never;
  "student.never measure turning": never;
  "student.never move belt motor": never;
  "student.never move belt treadle": never;
  "student.never move belt hand": never;
  "student.never too fast": never;
  "student.never breathe iron": never;
  "student.never long bar": never;
  "student.never hold work": never;
  "student.belt switch off": never;
  "student.belt off motor": never;
  "student.belt off treadle": never;
  "student.belt off hand": never;
  "student.belt open cover": never;
  "student.belt put": never;
  "student.belt turn by hand": never;
  "student.belt close motor": never;
  "student.belt close treadle": never;
  "student.belt close hand": never;
  "student.lost loose turning": never;
  "student.lost loose drilling": never;
  "student.lost waits turning": never;
  "student.lost waits drilling": never;
  "student.lost is": never;
  "student.lost one side": never;
  "student.lost too far half": never;
  "student.lost too far little": never;
  "student.ask before": never;
  "student.ask teacher": never;
  "student.how much thinner": never;
  "student.how far": never;
  "student.turn half": "wheel" | "moved";
  "student.turn whole": "n" | "wheel" | "moved";
  "student.turn to arrow mm": never;
  "student.turn to arrow in": never;
  "student.turn to arrow mm, diameter": never;
  "student.turn to arrow in, diameter": never;
  "student.lines make": "n" | "distance";
  "student.on the dial": "distance";
  "student.on the dial, which row": "distance";
  "student.lines more": "measured" | "wanted";
  "student.lines more, both sides": "measured" | "wanted";
  "student.lines": "n";
  "student.went too far": "lines";
  "student.went back half": never;
  "student.went back little": never;
  "student.dial says": "figure";
  "student.row says": "row" | "figure";
  "student.no whole turn": "says";
  "student.turns, then": "n" | "says";
  "student.nearest line": "turned" | "line";
  "student.as the dial stands at 0": "question";
  "student.step long": "length" | "wheel";
  "student.drill grabs": never;
  "student.clamp forgotten": never;
  "student.turns": "n";
  "student.eighths": "n";
  "student.turns and eighths": "turns" | "eighths";
  "student.too deep": "turned" | "left";
  "student.too little": "turned" | "left";
  "student.hole deep": "depth" | "wheel";
  "student.hole deep, eighths": "depth" | "wheel";
  "student.speed drilling": "material" | "size";
  "student.speed turning": "material" | "size";
  "student.position and speed": "position" | "rpm";
  "student.nowhere, unknown": never;
  "student.nowhere, too fast": never;
  "student.thread by the inch": "thread" | "depth" | "perInch";
  "student.thread": "thread" | "depth" | "pitch";
  "student.panel never": never;
  "student.panel ask": never;
  "student.panel dial": never;
  "student.panel one side": never;
  "student.panel belt": never;
  "student.panel speed": never;
  "student.I ask": never;
  "student.name": never;
  "student.ask how far": never;
  "student.try it": never;
  "student.work these out": never;
  "student.dial shows thinner": never;
  "student.touch and count": never;
  "student.touch and count on": never;
  "student.plug out first": never;
  "student.no speeds": never;
  "student.find the belt": never;
  "student.answers": never;
  "student.one turn": "wheel" | "distance";
  "student.one turn on the dial": "wheel" | "distance";
  "student.no dial": "wheel";
  "student.one line": "division";
  "student.dial shows travel": never;
  "student.dial shows depth": never;
  "student.dial shows travel across": never;
  "student.rows": "rows";
  "student.loses": "wheel" | "much";
  "student.loses, lines": "n" | "wheel" | "much";
  "student.slowest": "position";
  "student.ask": never;
  "student.material": never;
  "student.how big drilling": never;
  "student.how big turning": never;
  "student.no speed known": never;
  "student.take the slower": never;
  "student.wheel too far": never;
  "student.wheel back half": never;
  "student.wheel back little": never;
  "student.wheel on again": never;
  "student.count lines": "counted";
  "student.numbers in mm": never;
  "student.numbers in in": never;
  "student.lines are": "n" | "value";
  "student.step long, eighths": "length" | "wheel";
  "student.too far": "turned" | "left";
  "student.panel turns": never;
  "student.one turn, thinner": "wheel" | "distance";
  "student.old dial": "wheel";
  "student.lost one side, no dial": never;
  "measuring form.out": never;
  "measuring form.return": never;
  "measuring form.slide": never;
  "measuring form.quill": never;
  "measuring form.quill goes": never;
  "measuring form.gauge stands": never;
  "measuring form.lost motion": never;
  "measuring form.step plug": "off";
  "measuring form.step plug quill": "off";
  "measuring form.step take up": "enough";
  "measuring form.step take up quill": "enough";
  "measuring form.step zero": "travel";
  "measuring form.step zero quill": "travel";
  "measuring form.rim": "parts";
  "measuring form.step out": never;
  "measuring form.step out parts": "enough";
  "measuring form.step end": "enough";
  "measuring form.step return": never;
  "measuring form.step again": never;
  "measuring form.handwheel": never;
  "measuring form.one turn": "turn";
  "measuring form.made for": "travel" | "gauge";
  "measuring form.assumed": "length";
  "measuring form.put right": never;
  "measuring form.nothing held": never;
  "measuring form.held stated": "turn";
  "measuring form.held screw": "turn";
  "measuring form.held rack": "turn";
  "measuring form.held readings": "n" | "turn";
  "measuring form.held readings of": "n" | "day" | "turn";
  "measuring form.held lost": "lost";
  "measuring form.date": never;
  "measuring form.by": never;
  "measuring form.temperature": never;
  "measuring form.gauge": never;
  "measuring form.graduation": never;
  "measuring form.error limit": never;
  "measuring form.line": never;
  "measuring form.line on quill": never;
  "measuring form.turns": never;
  "measuring form.about": never;
  "measuring form.run": "run";
  "measuring form.dial": never;
  "measuring form.drum across": never;
  "measuring form.width": never;
  "measuring form.outside": never;
  "measuring form.inside": never;
  "measuring form.bevel large": never;
  "measuring form.bevel small": never;
  "measuring form.which dial": never;
  "measuring form.dial in file": "sizes";
  "measuring form.in file": never;
  "measuring form.into the file": never;
  "measuring form.places": "n" | "places" | "runs";
  "measuring form.enough": "over" | "doubt" | "within";
  "measuring form.not enough": "over" | "doubt" | "within";
  "measuring form.worn": "over" | "doubt" | "within";
  "measuring form.wear shown": "depth";
  "measuring form.no wear shown": never;
  "measuring form.why scatter known": never;
  "measuring form.why scatter assumed": never;
  "measuring form.why whole turns": never;
  "measuring form.why parts of a turn": never;
  "measuring form.why ends free": never;
  "measuring form.why short gauge": never;
  "measuring form.why more runs": never;
  "measuring form.drive": never;
  "measuring form.motor held": "rpm";
  "measuring form.belt held": "belt";
  "measuring form.belt round": never;
  "measuring form.belt vee": never;
  "measuring form.belt flat": never;
  "measuring form.belt toothed": never;
  "measuring form.chuck held": "rpm";
  "measuring form.tachometer": never;
  "measuring form.chuck mark": never;
  "measuring form.motor plate": never;
  "measuring form.mains": never;
  "measuring form.belt": never;
  "measuring form.rpm": never;
  "measuring form.drive plug": "off";
  "measuring form.drive pulleys": never;
  "measuring form.drive centres": never;
  "measuring form.drive speeds": never;
  "measuring form.driver": never;
  "measuring form.driven": never;
  "measuring form.measured": never;
  "measuring form.stage": never;
  "measuring form.centres": never;
  "measuring form.step": never;
  "measuring form.position": never;
  "measuring form.by ratio": never;
  "measuring form.again": never;
  "measuring form.direct": never;
  "measuring form.motor": never;
  "measuring form.teeth": "n";
  "measuring form.why parts of turns": never;
  "measuring form.why gauge short": never;
  "measuring form.why further runs": never;
  "measured report.a turn": "name" | "turn";
  "measured report.jumps": "name";
  "measured report.miscounted": "name";
  "measured report.readings": never;
  "measured report.scatter": "n" | "scatter";
  "measured report.scatter of runs": "n" | "runs" | "places" | "scatter";
  "measured report.half width": "degrees";
  "measured report.half width of runs": "degrees";
  "measured report.with wave": never;
  "measured report.lost motion": never;
  "measured report.lost": "lost" | "turn";
  "measured report.lost elsewhere": "from" | "to" | "least";
  "measured report.back doubtful": never;
  "measured report.back contradicts": "off" | "turn";
  "measured report.back take again": never;
  "measured report.no back": never;
  "measured report.maker meant": never;
  "measured report.on diameter": "length";
  "measured report.nominal": "nominal" | "out";
  "measured report.nominal over": "nominal" | "out" | "over" | "travel";
  "measured report.far from nominal": never;
  "measured report.along": never;
  "measured report.too few": never;
  "measured report.no bend": never;
  "measured report.curved": never;
  "measured report.pattern by": never;
  "measured report.uneven": "least" | "most";
  "measured report.zone": "turn" | "from" | "to";
  "measured report.chance": "percent";
  "measured report.chance below": never;
  "measured report.within": never;
  "measured report.whole turns only": never;
  "measured report.too few within": never;
  "measured report.no wave": never;
  "measured report.wave": "sway" | "crest";
  "measured report.again": never;
  "measured report.one run": never;
  "measured report.repeats": "deviation" | "degrees";
  "measured report.iso 230": "runs" | "accuracy" | "repeatability" | "reversal";
  "measured report.iso 230 few": "runs" | "accuracy" | "repeatability" | "reversal";
  "measured report.run": "run";
  "measured report.zero above": "off";
  "measured report.zero below": "off";
  "measured report.reading": "reading";
  "measured report.off the line": "off";
  "measured report.more off": "n";
  "measured report.from here": "reading";
  "measured report.take again": never;
  "measured report.turns too many": "n";
  "measured report.turns too few": "n";
  "measured report.sign": never;
  "measured report.swapped": "reading";
  "measured report.figure too much": "by";
  "measured report.figure too little": "by";
  "measured report.plot off": never;
  "measured report.plot band": never;
  "measured report.plot back": never;
  "measured report.turns of the wheel": never;
  "measured report.off by": never;
  "measured report.standard": never;
  "measured report.degrees": never;
  "measured report.degrees of runs": never;
  "measured report.known": never;
  "measured report.together": never;
  "measured report.expanded": "factor" | "half";
  "measured report.factor as of": "factor" | "degrees";
  "measured report.millionths": never;
  "measured report.millionths meant": never;
  "measured report.source scatter": never;
  "measured report.source graduation": never;
  "measured report.source gauge error": never;
  "measured report.source temperature": never;
  "measured report.how scatter": never;
  "measured report.how scatter of runs": never;
  "measured report.how graduation": never;
  "measured report.how graduation counts": never;
  "measured report.how gauge error": never;
  "measured report.how temperature": never;
  "measured report.from turn": never;
  "measured report.to turn": never;
  "measured report.turn here": never;
  "measured report.ahead": never;
  "measured report.number": never;
  "measured report.turns": never;
  "measured report.out": never;
  "measured report.return": never;
  "measured report.line": never;
  "measured report.as read": never;
  "measured report.more readings": "n";
  "measured report.day": "day";
  "measured report.no day": never;
  "measured report.by": never;
  "measured report.gauge": never;
  "measured report.temperature": never;
  "measured report.own record": never;
  "remarks.closes exactly": "n";
  "remarks.reads too much": "each" | "over" | "travel";
  "remarks.reads too little": "each" | "over" | "travel";
  "remarks.zone": "perTurn" | "from" | "to";
  "remarks.wave": "size" | "off" | "crest";
  "remarks.aim light": never;
  "remarks.aim firm": never;
  "remarks.derated": "factor";
  "remarks.motor doubtful": "what";
  "remarks.near limit": "positions";
  "remarks.position read": "position" | "speeds";
  "remarks.pulley astray": "pulley";
  "remarks.one reading astray": "which";
  "remarks.readings astray": "which";
  "remarks.reading not used": "which";
  "remarks.unusual motor": "rpm" | "least" | "most";
  "remarks.unusual treadle": "rpm" | "least" | "most";
  "remarks.unusual hand": "rpm" | "least" | "most";
  "remarks.not on these mains": "rpm" | "hertz";
  "remarks.beyond limit": never;
  "remarks.may reach": "rpm";
  "remarks.never above": "rpm";
  "remarks.near limit, short": never;
  "remarks.measure first": never;
  "remarks.reading doubtful": never;
  "remarks.feed questioned": "wheel" | "why";
  "remarks.worn": "wheel" | "most";
  "remarks.wavy": "wheel" | "most";
  "remarks.curved": "wheel" | "most";
  "remarks.wild readings": "n" | "wheel";
  "remarks.far from nominal": "times";
  "remarks.readings beyond travel": never;
  "remarks.turn 0": "where";
  "remarks.turn 0 not told": never;
  "remarks.whole turns only": never;
  "remarks.lost motion questioned": "turn";
  "remarks.lost motion unknown": never;
  "remarks.lost motion miscounted": never;
  "remarks.lost motion wild": "n";
  "remarks.readings jump": never;
  "remarks.turn miscounted": never;
  "remarks.feed not given": never;
  "printer check.question": never;
  "printer check.across": never;
  "printer check.down": never;
  "printer check.step print": never;
  "printer check.step rule": never;
  "printer check.step inch rule": never;
  "printer check.step top": "least" | "most" | "reading";
  "printer check.step inch top": "least" | "most" | "reading";
  "printer check.step left": never;
  "printer check.step diagonals": never;
  "printer check.step wrong": "paper";
  "printer check.rule": never;
  "printer check.comb": never;
  "printer check.side": never;
  "printer check.must measure": never;
  "printer check.measured": never;
  "printer check.again": never;
  "printer check.diagonal": "number";
  "printer check.then write": never;
  "printer check.none held": never;
  "printer check.held": "printer" | "figures";
  "printer check.held across": "measured" | "nominal";
  "printer check.held down": "measured" | "nominal";
  "printer check.held diagonals": "first" | "second";
  "printer check.printer": never;
  "printer check.paper": never;
  "printer check.date": never;
  "front.position": never;
  "front.speed": never;
  "front.only position": never;
  "front.by ratio": never;
  "front.handwheel": never;
  "front.a turn": never;
  "front.division": never;
  "front.dial reads": never;
  "front.numbers grow": never;
  "front.lost motion": never;
  "front.diameter": never;
  "front.travel": never;
  "front.clockwise": never;
  "front.anticlockwise": never;
  "front.not measured": never;
  "front.not given": never;
  "front.miscounted": never;
  "front.scatters": never;
  "front.speeds": never;
  "front.handwheels": never;
  "front.cautions": never;
  "binder.binder": never;
  "binder.contents": never;
  "binder.contents by page": never;
  "binder.print": never;
  "binder.not made": "sheets";
  "binder.keep": never;
  "binder.page": "page";
  "binder.missing turning": "kind";
  "binder.missing drilling": "kind";
  "binder.missing room for the card": "width" | "height" | "paper" | "across" | "down";
  "binder.missing room on few cards": "cards";
  "binder.missing room in margins": "paper";
  "binder.larger paper": "paper";
  "binder.without": "name" | "remedy";
  "binder.missing everything": never;
  "binder.missing room": "paper";
  "binder.missing drive": never;
  "binder.missing drive and feed": never;
  "binder.missing feed, miscounted": never;
  "binder.missing feed": never;
  "binder.missing dial, uncertain": never;
  "binder.missing dial": never;
  "binder.missing vernier, no dial": never;
  "binder.missing vernier": never;
  "binder.missing readings": never;
  "binder.missing job": never;
  "binder.missing scales": never;
  "binder.missing angle scales": never;
  "binder.missing scales of these": never;
  "titles.angle scale": never;
  "titles.belt card": never;
  "titles.dial choices": never;
  "titles.dial": never;
  "titles.drilling card": never;
  "titles.engraving": never;
  "titles.hand feed": never;
  "titles.measured report": never;
  "titles.measuring form": never;
  "titles.plan": never;
  "titles.printer check": never;
  "titles.ring cutting": never;
  "titles.scales": never;
  "titles.speed diagram": never;
  "titles.speed tree": never;
  "titles.start readings": never;
  "titles.stops": never;
  "titles.student": never;
  "titles.tapers": never;
  "titles.threads": never;
  "titles.turns": never;
  "titles.vernier": never;
  "materials and hazards.mild steel": never;
  "materials and hazards.free-cutting steel": never;
  "materials and hazards.grey cast iron": never;
  "materials and hazards.tool steel": never;
  "materials and hazards.brass": never;
  "materials and hazards.bronze": never;
  "materials and hazards.stainless steel": never;
  "materials and hazards.aluminium": never;
  "materials and hazards.plastics": never;
  "materials and hazards.acetal": never;
  "materials and hazards.acrylic": never;
  "materials and hazards.rigid PVC": never;
  "materials and hazards.polystyrene": never;
  "materials and hazards.free-cutting stainless steel": never;
  "materials and hazards.magnesium": never;
  "materials and hazards.PTFE": never;
  "materials and hazards.nylon": never;
  "materials and hazards.zinc alloy": never;
  "materials and hazards.medium-carbon steel": never;
  "materials and hazards.high-carbon steel": never;
  "materials and hazards.alloy steel": never;
  "materials and hazards.copper": never;
  "materials and hazards.wrought iron": never;
  "materials and hazards.hard wood": never;
  "materials and hazards.titanium": never;
  "materials and hazards.zirconium": never;
  "materials and hazards.beryllium copper": never;
  "materials and hazards.wet oil": never;
  "materials and hazards.wet plenty": never;
  "materials and hazards.wet dry": never;
  "materials and hazards.wet air": never;
  "materials and hazards.wet little air": never;
  "materials and hazards.wet supplier": never;
  "materials and hazards.wet bronze": never;
  "materials and hazards.wet paraffin": never;
  "materials and hazards.wet no water": never;
  "materials and hazards.wet zinc": never;
  "materials and hazards.wet soluble": never;
  "materials and hazards.wet beryllium": never;
  "materials and hazards.plastics wrap": never;
  "materials and hazards.paraffin burns": never;
  "materials and hazards.iron dust": never;
  "materials and hazards.Magnesium": never;
  "materials and hazards.Zirconium": never;
  "materials and hazards.Titanium": never;
  "materials and hazards.Beryllium": never;
  "materials and hazards.Fluoroplastics": never;
  "materials and hazards.PVC": never;
  "materials and hazards.Wood": never;
  "materials and hazards.magnesium burns": never;
  "materials and hazards.zirconium burns": never;
  "materials and hazards.titanium burns": never;
  "materials and hazards.beryllium poisons": never;
  "materials and hazards.fluoroplastics poison": never;
  "materials and hazards.PVC poisons": never;
  "materials and hazards.wood harms": never;
  "materials and hazards.where safety practices": never;
  "materials and hazards.where zirconium": never;
  "materials and hazards.where titanium": never;
  "materials and hazards.common practice": never;
  "materials and hazards.source NFPA": never;
  "materials and hazards.source safety at work": never;
  "materials and hazards.source army": never;
  "materials and hazards.source light metals": never;
  "materials and hazards.source magnesium": never;
  "materials and hazards.source plastics machining": never;
  "materials and hazards.source plastics turning": never;
  "materials and hazards.source feeds": never;
  "materials and hazards.source speeds": never;
  "materials and hazards.source pocket book": never;
  "materials and hazards.source recipes": never;
  "materials and hazards.source tap speeds": never;
  "materials and hazards.source tap table": never;
  "materials and hazards.source navy": never;
  "materials and hazards.high-speed steel": never;
  "materials and hazards.carbon steel": never;
  "materials and hazards.carbide": never;
  "materials and hazards.machine file": never;
  "materials and hazards.figure for": "what";
  "materials and hazards.low-carbon steel": never;
  "materials and hazards.plastics in general": never;
  "materials and hazards.alloy steel under 250 HB": never;
  "materials and hazards.alloy steel of 250 to 350 HB": never;
  "materials and hazards.none for turning": never;
  "materials and hazards.none for drilling": never;
  "materials and hazards.none for free-cutting steel": never;
  "materials and hazards.none for high-carbon steel": never;
  "materials and hazards.none for alloy steel": never;
  "materials and hazards.source own file": never;
  "no room.unnamed": never;
  "no room.pieces": "names";
  "no room.table": "table" | "wants" | "has";
  "no room.wider": "table" | "has";
  "no room.card key": "wants" | "has";
  "no room.card row": "wants" | "has";
  "no room.too many cards": "positions" | "cards";
  "no room.single row": never;
  "no room.shorter labels": "else";
  "no room.larger cover": never;
  "no room.bars": never;
  "no room.words of bars": never;
  "step labels.open": never;
  "step labels.direct": never;
  "step labels.geared": never;
  "step labels.open otherwise": never;
  "step labels.engaged": never;
  "practice.unit turns": never;
  "practice.unit eighths": never;
  "practice.unit lines": never;
  "practice.right": never;
  "practice.not marked": never;
  "practice.line meant": "figure" | "unit" | "turns";
  "practice.line meant in row": "figure" | "unit" | "row" | "turns";
  "practice.turn the dial": never;
  "practice.too many": "counted";
  "practice.too few": "counted";
  "practice.too far": "counted";
  "practice.short": "counted";
  "practice.too much": "length";
  "practice.too little": "length";
  "practice.far too much": never;
  "practice.too much or far": "much" | "counted";
  "practice.and also": "one" | "other";
  "practice.waits too": "off";
  "practice.waits": never;
  "practice.which": "n";
  "practice.write": "example";
  "practice.turns as": never;
  "practice.lines as": never;
  "practice.length as mm": never;
  "practice.length as in": never;
  "practice.choose": never;
  "practice.nowhere": never;
  "practice.there is one": never;
  "practice.no place": never;
  "practice.too fast": "counted";
  "practice.too slow": "counted";
  "practice.part of turn": "part";
  "practice.part of line": "part";
  "practice.part of eighth": "part";
  "practice.positions": "n";
};
export type Key = keyof Gaps;
/** One text, or one for each form of the plural. */
export type Text = string | { readonly [form in Intl.LDMLPluralRule]?: string } & { readonly other: string };

const en: Readonly<Record<Key, Text>> = {
  "units and numbers.decimal mark": ".",
  "units and numbers.nouns": "small",
  "units and numbers.unit mm": "mm",
  "units and numbers.unit in": "in",
  "units and numbers.rpm": "rpm",
  "units and numbers.list and": "{list} and {last}",
  "page.no revision": "no revision given",
  "page.revision": "revision {revision}",
  "page.measured": "measured {day}",
  "page.true size": "Print at 100 %, never “fit to page”.",
  "page.label sheet": "sheet",
  "page.label machine": "machine",
  "page.label revision": "revision",
  "page.label measured": "measured",
  "page.label page": "page",
  "page.of": "{page} of {pages}",
  "page.not given": "not given",
  "page.who comes first": "The maker's manual, local rules and a competent supervisor come before this sheet.",
  "page.chuck limit": "chuck: never above {rpm} rpm",
  "page.chuck unknown": "chuck: see its mark",
  "page.both limits": "never above: chuck {chuck}, spindle {spindle} rpm",
  "page.spindle limit, chuck unknown": "spindle: never above {spindle} rpm; chuck: see its mark",
  "page.card of": "card {card} of {cards}",
  "page.goes on": "{name}, continued",
  "page.not corrected": "Not corrected for any printer.",
  "page.corrected": "Corrected for the printer {printer}",
  "page.corrected by": ": {factors}; down is the sheet's long side.",
  "page.corrected by alone": ": {factors}.",
  "page.across factor": "across × {factor}",
  "page.down factor": "down × {factor}",
  "page.skew": "skew {skew}",
  "page.check bar": "must be {length} long, from end to end · {side}",
  "page.along across": "across: the sheet's short side",
  "page.along down": "down: the sheet's long side",
  "page.used for turning": "As a lathe",
  "page.used for drilling": "Stood on end, as a drill",
  "cautions.eyes": "Safety glasses on. No gloves, rings, loose sleeves or loose hair.",
  "cautions.tailstock": "Lock the tailstock. Key out of the chuck.",
  "cautions.tailstock 1": "Seat the drill chuck hard in the tailstock's barrel: a drill that grabs pulls it out and spins it.",
  "cautions.tailstock 2": "Begin with a centre drill. Ease the feed as the drill breaks through. Stop before you clear chips, and use a brush.",
  "cautions.drill": "Clamp the work. Key out of the chuck.",
  "cautions.drill 1": "A drill that grabs spins loose work like a propeller: never hold it by hand.",
  "cautions.drill 2": "Stand the machine so that it cannot topple: bolt it down. Ease the feed as the drill breaks through.",
  "cautions.off motor": "PLUG OUT",
  "cautions.off treadle": "FOOT OFF THE TREADLE",
  "cautions.off hand": "HAND OFF THE CRANK",
  "cautions.power off motor": "plug out",
  "cautions.power off treadle": "foot off the treadle",
  "cautions.power off hand": "hand off the crank",
  "cautions.belt": "{off}, then open. Key out of the chuck.",
  "cautions.belt 1": "Close the cover before you start. Never exceed the speed marked on the chuck, whatever a sheet says.",
  "cautions.belt 2": "Start slow with large, long or uneven work. Speeds are guides, for sharp tools and firm work.",
  "cautions.belt 3": "A belt left slack on purpose slips sooner, but nobody knows at what load: it saves no finger.",
  "cautions.dial": "Stop the spindle, then measure or set.",
  "cautions.dial 1": "Try a new dial against an indicator before you trust it with work.",
  "cautions.thread": "{off}. Turn the spindle by hand.",
  "cautions.thread 1": "A tap or die under power breaks, and takes the hand with it.",
  "cautions.thread 2": "Half a turn on, a quarter back, to break the chip; cutting oil for steel. Clear a blind hole often, with a brush.",
  "cautions.job": "Key out of the chuck. Safety glasses on.",
  "cautions.job and drill": "Clamp the work, key out of the chuck. Safety glasses on.",
  "cautions.job 1": "Turn the work by hand through one whole turn before the power goes on: nothing may strike tool, slide or guard.",
  "cautions.job 2": "Stop the spindle to measure, to move a belt, to clear chips. Chips are hot and sharp; cast-iron dust is not for lungs or slides.",
  "cautions.bar": "No bar may whip behind the spindle. Key out of the chuck.",
  "cautions.bar and drill": "Clamp the work, let no bar whip. Key out of the chuck.",
  "cautions.bar 1": "Long bar behind the spindle whips: cut it to end inside, or run it slowly in a supporting tube.",
  "cautions.bar 2": "Do not lean on a stop with power feed: it is a gauge, not a brake.",
  "cautions.taper": "{off}, then swing. Lock it before you start.",
  "cautions.taper 1": "Take a trial cut and measure: a swivel's own marks are rarely good to a tenth of a degree.",
  "cautions.drill to the end": "Keep the drill cutting to the end, also where you ease the feed as it breaks through, and draw it straight out: it must not turn without cutting.",
  "cautions.never finely": "Never feed {material} finely: its fine chips burn. No least feed for it was found in print: feed as coarsely as work and machine bear.",
  "cautions.never finer than": "Never feed {material} more finely than {feed} a revolution ({sources}): its fine chips burn.",
  "belt card.belt": "belt",
  "belt card.rpm": "rpm",
  "belt card.turn diameters": "turning: diameters in {unit} by speed",
  "belt card.drill diameters": "drills in {unit} by speed (up to {most})",
  "belt card.other diameters": "{operation}: diameters in {unit} by speed",
  "belt card.diameters": "diameters in {unit}",
  "belt card.unit mm": "mm",
  "belt card.unit in": "inches",
  "belt card.all": "all",
  "belt card.to": "to {to}",
  "belt card.from": "{from}+",
  "belt card.range": "{from}–{to}",
  "belt card.only": "only",
  "belt card.motor": "motor",
  "belt card.treadle": "treadle wheel",
  "belt card.crank": "hand crank",
  "belt card.spindle": "spindle",
  "belt card.countershaft": "countershaft",
  "belt card.countershaft number": "countershaft {n}",
  "belt card.clamp": "Clamp the work.",
  "belt card.begin with": "Begin with {position}, as drawn.",
  "belt card.begin": "Begin with {position}.",
  "belt card.drawn": "Drawn: {position}.",
  "belt card.one belt": "One belt does not fit all steps: {stages}. Measure again.",
  "belt card.no pulleys": "No room for the pulleys: see speed tree.",
  "belt card.sign": "{sign} = {name}",
  "belt card.blank": "Blank: take another row for this material.",
  "belt card.omitted": "Nearly the same speed, so either: {positions}.",
  "belt card.either": "/ either: nearly the same speed.",
  "belt card.covered": "Left out, as the motor gives their speeds at others: {positions}.",
  "belt card.by ratio": "~ by ratio, not measured.",
  "belt card.measure first": "! measure first: near the limit.",
  "belt card.reading doubtful": "? reading doubtful: measure again.",
  "belt card.turn no higher": "max: turn the motor no higher, for the limit.",
  "belt card.set": "Small figures: rpm to set, from the smaller diameter to the larger.",
  "belt card.unknown": "speed not known: measure first.",
  "belt card.do not use": "beyond the limit, do not use",
  "belt card.may reach": "may reach {rpm}, do not use",
  "belt card.in two rows": "A size in two rows: the one up to it.",
  "belt card.more speed": "Small work bears more speed.",
  "belt card.larger too fast": "Larger than listed: too fast here.",
  "belt card.too fast": "Even the slowest is too fast for {materials}.",
  "belt card.no figures": "No figures for {materials}.",
  "belt card.caution elsewhere": "No figures for {materials}; caution on the drilling card.",
  "belt card.further": {"one":"{n} more material: speed diagram.","other":"{n} more materials: speed diagram."},
  "belt card.further named": "Further materials, on the speed diagram: {materials}.",
  "belt card.further with cautions": "Further materials, on the speed diagram with their cautions: {materials}.",
  "speed diagram.rpm": "rpm",
  "speed diagram.position": "belt",
  "speed diagram.lines left": "Lines left out for want of room: {speeds} rpm.",
  "speed diagram.out of sight": "Without a line, slower or faster than this work asks for: {speeds} rpm.",
  "speed diagram.no bar": "Without a bar, as the figures go by rpm or by size: {materials}.",
  "speed diagram.barless by rpm": "{material} ({figures}): {positions}",
  "speed diagram.barless by size": "{material}: {positions}",
  "speed diagram.position at": "{position} at {rpm} rpm",
  "speed diagram.no position": "too fast here",
  "speed diagram.diameters": "ø {diameters} {unit} {place}",
  "speed diagram.in full": "Names in full: {names}.",
  "speed diagram.work": "diameter of the work, {unit}",
  "speed diagram.drill": "diameter of the drill, {unit}",
  "speed diagram.cutting speed": "cutting speed, {unit}",
  "speed diagram.how to read": "Go straight up from the diameter into the height of the material's bar. The line that crosses there is the speed, the list says where the belt goes; between two lines take the slower.",
  "speed diagram.how to read, variable": "Go straight up from the diameter into the height of the material's bar. Any speed between the two lines of a belt position is set at the motor; a bar with the position's name joins them.",
  "speed diagram.example": "The dots show one way: {material}, {diameter}: {rpm} rpm, belt {position}.",
  "speed diagram.rpm range": "{range} rpm",
  "speed diagram.factor range": "× {from} to {to}",
  "speed diagram.of the nearest": "{factors} of the nearest figures there are.",
  "speed diagram.not counted": "Not counted, as twice or half of the others: {sources}.",
  "speed diagram.sources": "Cutting speeds from: {sources}.",
  "speed diagram.from memory": "; in part from memory",
  "speed tree.by motor": "motor",
  "speed tree.by treadle": "treadle",
  "speed tree.by hand": "by hand",
  "speed tree.spindle": "spindle, rpm",
  "speed tree.gap": "gap",
  "speed tree.overlap": "overlap",
  "speed tree.by ratio": "~ by ratio, not measured",
  "speed tree.measure first": "! measure before you trust it",
  "speed tree.beyond": "× beyond the limit, do not use",
  "speed tree.turned down": "max: the motor turned no higher, for the limit",
  "speed tree.shafts": "shafts between motor and spindle by ratio alone",
  "speed tree.one speed": "One speed: nothing to space.",
  "speed tree.pair": "{slower} and {faster}",
  "speed tree.even": "Spaced evenly by ratio, {n} speeds from {slowest} to {fastest} rpm would each be {step} times the last; the nearest step of the preferred numbers is {preferred}.",
  "speed tree.every speed": "Every speed from {slowest} to {fastest} rpm can be set.",
  "speed tree.variable": "Speeds can be set from {slowest} to {fastest} rpm, but for this:",
  "speed tree.gaps": "Gap between {pairs}.",
  "speed tree.overlaps": "Nearly the same: {pairs}.",
  "speed tree.and more": "{names} and {n} more",
  "speed tree.belts": "Belts",
  "speed tree.loose belt": "A belt left slack on purpose slips before something breaks, but at what load these numbers do not say: do not trust it to save a finger or a cutter.",
  "speed tree.belt with idler": "{belt}: an idler presses on this belt: measure its length by a string.",
  "speed tree.no centres": "{belt}: centres not given in the file, so no belt length.",
  "speed tree.step": "step",
  "speed tree.driver": "driver",
  "speed tree.driven": "driven",
  "speed tree.belt length": "belt length",
  "speed tree.wrap": "wrap on the small pulley",
  "speed tree.degrees": "degrees",
  "speed tree.move shafts": "move the shafts",
  "speed tree.minus closer": "{unit}, − closer",
  "speed tree.motor speed": "motor speed",
  "speed tree.only position": "only",
  "speed tree.belt run open": "{belt}, open belt, centres {centres}",
  "speed tree.belt run crossed": "{belt}, crossed belt, centres {centres}",
  "speed tree.one serves": "One belt serves every step: the lengths differ by {apart}.",
  "speed tree.one does not serve": "One belt does not serve every step: the lengths differ by {apart}; move the shafts as shown for a belt of {shortest}, or fit a tightener.",
  "speed tree.toothed": "A toothed belt is bought by its teeth, not cut.",
  "speed tree.stretch not given": "A belt joined end to end: {shortest} at half its thickness, less the stretch its maker states, which the machine's file does not give.",
  "speed tree.cut": "Cut a belt joined end to end to {length}: it then drives stretched by {percent} %. Add what the joint takes up.",
  "speed tree.little wrap": "Less than 120° of wrap (bold) slips easily: more distance or an idler helps.",
  "speed tree.vee": "A vee belt is bought endless, by the length of its pitch line: {shortest}.",
  "drive notes.by motor": "Motor {rpm} rpm",
  "drive notes.by treadle": "Treadle: wheel {rpm} rpm",
  "drive notes.by hand": "By hand: wheel {rpm} rpm",
  "drive notes.at mains": "{speed} at {hertz} Hz",
  "drive notes.crossed": "{stage} is crossed: its shaft turns the other way",
  "drive notes.slip not known": "slip not known",
  "drive notes.slip not measured": "slip not measured: true speeds are a little lower",
  "drive notes.unloaded": ", or with the motor unloaded up to {percent} % higher, which the limits are tested against",
  "drive notes.faster": "{percent} faster than the motor's plate and the pulleys give: it runs unloaded, or a pulley is not what the file says",
  "drive notes.mean slip": "mean slip {percent}",
  "drive notes.slips": "slip: {slips}",
  "drive notes.pulleys": "{driver} to {driven}",
  "drive notes.idler": " over an idler",
  "drive notes.direct": "direct",
  "drive notes.no chuck limit": "chuck limit not given: see the mark on the chuck",
  "drive notes.chuck limit": "never above {rpm} rpm with the chuck",
  "drive notes.spindle limit": "never above {rpm} rpm at the spindle",
  "drive notes.vee line": "vee belt {section}: taken to pull {depth} inside the rim ({source}); {other} says {otherDepth}, by which speeds differ by up to {most} %",
  "drive notes.source inch grooves": "a belt maker's inch groove table",
  "drive notes.source iso": "ISO 4183:1995 (from memory)",
  "drilling card.by diameter": "{operation}, {tool}: belt and rpm by diameter, {unit}",
  "drilling card.by thread": "{operation}, {tool}: belt and rpm by thread",
  "drilling card.by hand": "Turn the spindle by hand, {off}: {operations}. The file gives neither a reversing motor nor a clutch; without one a tool that binds in its hole breaks.",
  "drilling card.by hand, too fast": "Turn the spindle by hand, {off}: {operations}. No position is slow enough to stop and reverse in time.",
  "drilling card.no speed": "None: no speed of this machine is known.",
  "drilling card.no drills": "None of the drills is within the largest that the file allows.",
  "drilling card.no figures": "No figures for {materials}.",
  "drilling card.no figures here": "no figures",
  "drilling card.too fast": "too fast",
  "drilling card.tap by hand": "by hand",
  "drilling card.only position": "only one",
  "drilling card.sizes at a cut": "Under a cut: the last size before it | the diameter at the cut | the first size behind it.",
  "drilling card.at a cut": "Under a cut: the diameter at it.",
  "drilling card.on a cut": "A size that is just at a cut takes the position to its left.",
  "drilling card.cut alone": "A cut without a figure has no room for one: go straight down from the drill.",
  "drilling card.set": "Two speeds in a piece: what to set the motor to, from its smaller end to its larger.",
  "drilling card.by ratio": "~ by ratio, not measured.",
  "drilling card.measure first": "! measure first: near the limit.",
  "drilling card.reading doubtful": "? measure again: a reading of it cannot be right.",
  "drilling card.black": "Black: even the slowest position is too fast, or beyond a limit.",
  "drilling card.more speed": "Small drills would bear more speed than there is.",
  "drilling card.tap stop": "Taps driven by the machine; by hand they need no speed. Set the depth stop, and reverse, or let the clutch slip, before the bottom of the hole.",
  "drilling card.tap reversed": "A hand reverses in time at no more than {rpm} rpm.",
  "drilling card.tap by own speed": "The file's own speeds stand as it gives them.",
  "drilling card.no barrel": "Depth per turn: the machine's file gives no tailstock barrel or quill with its feed; add it there.",
  "drilling card.depth": "Depth by turns of the {wheel}",
  "drilling card.whole turns": "whole turns",
  "drilling card.and": "and",
  "drilling card.feeding": "Feeding the drill in {material}, by the {wheel}",
  "drilling card.drill": "drill",
  "drilling card.rpm": "rpm",
  "drilling card.feed": "feed per revolution",
  "drilling card.count": "what to count",
  "drilling card.at least feed": "at the least feed",
  "drilling card.feeds": "Feeds from {sources}. Ease off as the drill breaks through; draw it out to clear chips when the hole is three diameters deep.",
  "drilling card.feeds that burn": "Feeds from {sources}, the coarsest for each drill, and no speed at which a hand feeds more finely; draw it out to clear chips when the hole is three diameters deep.",
  "drilling card.chips burn": "Fine chips of {material} burn. {end} Where the hand lags behind a coarse feed, take a slower position.",
  "drilling card.number drill": "no. {number}",
  "drilling card.letter drill": "letter {letter}",
  "drilling card.operation turning": "turning",
  "drilling card.operation finish turning": "finish turning",
  "drilling card.operation facing": "facing",
  "drilling card.operation boring": "boring",
  "drilling card.operation parting": "parting",
  "drilling card.operation forming": "forming",
  "drilling card.operation knurling": "knurling",
  "drilling card.operation threading": "threading",
  "drilling card.operation drilling": "drilling",
  "drilling card.operation reaming": "reaming",
  "drilling card.operation countersinking": "countersinking",
  "drilling card.operation tapping": "tapping",
  "drilling card.operation threading by die": "threading by die",
  "drilling card.diameter of the work": "diameter of the work",
  "drilling card.outside diameter from the outside in": "outside diameter, from the outside in",
  "drilling card.diameter of the bore": "diameter of the bore",
  "drilling card.largest diameter under the tool": "largest diameter under the tool",
  "drilling card.outside diameter of the thread": "outside diameter of the thread",
  "drilling card.diameter of the drill": "diameter of the drill",
  "drilling card.diameter of the reamer": "diameter of the reamer",
  "drilling card.largest diameter of the countersink": "largest diameter of the countersink",
  "hand feed.count too fast": "too fast by hand",
  "hand feed.fine": "fine",
  "hand feed.medium": "medium",
  "hand feed.coarse": "coarse",
  "hand feed.feed": "feed",
  "hand feed.position": "position",
  "hand feed.rpm": "rpm",
  "hand feed.only position": "only one",
  "hand feed.not for": "{sign} never in {materials}.",
  "hand feed.turn": "1 turn = {travel}",
  "hand feed.turn of slide": "1 turn moves the slide {travel}",
  "hand feed.division": "1 division = {division}",
  "hand feed.minutes": "Minutes for {length}",
  "hand feed.turn in": "{counts} s",
  "hand feed.turns in": "{parts} : {counts} s",
  "hand feed.minutes in": "{minutes} min",
  "hand feed.quarter in": "¼ : {counts} s",
  "hand feed.divisions in": "{parts} div : {counts} s",
  "hand feed.too fast": "–",
  "hand feed.sign turn": "4 s: one turn of the wheel takes 4 seconds.",
  "hand feed.sign minutes": "2 min: so long for one turn, hardly a feed by hand.",
  "hand feed.sign turns": "3 : 2 s: three turns take 2 seconds.",
  "hand feed.sign quarter": "¼ : 9 s: a quarter turn takes 9 seconds.",
  "hand feed.sign division": "5 div : 1 s: five divisions of its dial pass each second.",
  "hand feed.sign too fast": "–: too fast by hand.",
  "hand feed.sign too quick": "–: less than a second a turn, too fast by hand.",
  "hand feed.count aloud": "Count seconds aloud, and turn evenly.",
  "hand feed.max": "max",
  "hand feed.beyond": "× beyond the limit, do not use.",
  "hand feed.do not use": "Beyond the limit, do not use: {positions}.",
  "hand feed.forbidden": "{position} ({rpm} rpm)",
  "hand feed.turn no higher": "max: turn the motor no higher, for the limit.",
  "hand feed.measure first": "! measure first: near the limit.",
  "hand feed.reading doubtful": "? measure again: a reading of it cannot be right.",
  "hand feed.by ratio": "~ by ratio, not measured.",
  "hand feed.published for": "{material} {finishing} finishing, {roughing} roughing",
  "hand feed.published": "Published feeds per revolution, {unit}, for full-size lathes, so take the roughing ones as the most for a light machine: {feeds}; parting {parting}{not}. From: {sources}.",
  "hand feed.published not": ", but not {materials}",
  "hand feed.turns to counts": "{parts} turns to a count of {counts}",
  "hand feed.1 a count": "1 turn a count",
  "hand feed.2 a count": "2 turns a count",
  "hand feed.too slow": "too slow to count",
  "hand feed.1 division a count": "1 division a count",
  "hand feed.count a turn": "count {count} a turn",
  "hand feed.count a quarter": "count {count} a quarter turn",
  "hand feed.divisions a count": "{count} divisions a count",
  "hand feed.divisions to counts": "{parts} divisions to a count of {counts}",
  "hand feed.count a division": "count {count} a division",
  "dials.index": "index",
  "dials.reading grows": "turned so, the reading grows",
  "dials.seam butt": "the seam: ends butt",
  "dials.seam tab": "the seam: tab under",
  "dials.turn 1": "1st turn",
  "dials.turn 2": "2nd turn",
  "dials.turn 3": "3rd turn",
  "dials.turn any": "{turn}th turn",
  "dials.division": "1 div {division}",
  "dials.upper lower": "upper {upper}, lower {lower}",
  "dials.on diameter": "on diameter",
  "dials.on travel": "on travel",
  "dials.revision": "rev {revision}",
  "dials.a turn": "1 turn = {feed}",
  "dials.off over": "may be off by {doubt} over {travel}",
  "dials.too much over": "reads {error} too much over {travel}",
  "dials.too little over": "reads {error} too little over {travel}",
  "dials.upper scale": "Upper scale: {scale}",
  "dials.lower scale": "Lower scale: {scale}",
  "dials.last short": "its last division is only {last}: count whole turns, and begin each from its start reading",
  "dials.last long": "its last division is {last}: count whole turns, and begin each from its start reading",
  "dials.rows": "{rows} rows, read in order, one row a turn, then over again",
  "dials.sense assumed": "Which way the numbers grow the file does not say: clockwise is taken",
  "dials.once round": "the travel ends before the dial has gone once round: no turns are counted",
  "dials.nothing adds up": "begins again each turn, so that nothing adds up, but does not run on past zero",
  "dials.closes exactly": "closes exactly",
  "dials.closes within": "closes as well as the feed is known",
  "dials.does not close": "does not close",
  "dials.reads too much": "reads {turn} too much each turn, {error} over {travel}",
  "dials.reads too little": "reads {turn} too little each turn, {error} over {travel}",
  "dials.feed not given": "How well the feed is known is not given: {names}.",
  "dials.measured only": "no more of its travel was measured, and nothing is known beyond",
  "dials.wave": "Unevenly spaced on purpose: the measured once-per-turn error is built in. Its zero belongs where the wheel stood at turn 0 of the readings.",
  "dials.vernier of over": "Vernier of {parts} over {spans} divisions: reads {count}",
  "dials.vernier wrong": "from {from} to 0 read no vernier: it reaches over the short last division",
  "dials.finer than known": "finer than the feed is known over {travel}",
  "dials.blur": "Too small for its divisions: marks {apart} apart blur. Take a coarser division, a larger dial, or a coarser dial with a vernier.",
  "dials.close": "Close: marks {apart} apart. A coarser division, or a vernier on one, is easier on the eye.",
  "dials.too large": "This dial is too large for the paper even in pieces: choose larger paper in the file.",
  "dials.in pieces": {"one":"In {n} piece.","other":"In {n} numbered pieces, which add up exactly."},
  "dials.cramped": {"one":"Its {n} row is only {height} high, too low for numbers: a wider ring or strip has room for them.","other":"Its {n} rows are only {height} high each, too low for numbers: a wider ring or strip, fewer rows or one scale has room for them."},
  "dials.read from": "Its figures are read well from up to {far}; a wider ring or strip has room for larger ones.",
  "dials.cutting": "Cut from mark to mark, through the graduations that run over the edge; the arrow points to the edge at the index. Inside circles and hollow edges first, the ends last.",
  "dials.round": "A round edge that carries graduations runs evenly inside their ends, by {over}: turn the paper into the scissors, not the scissors round it; the corners about a whole ring are those of the square that it just touches.",
  "dials.centre": "Centre a ring by its cross before you cut it out.",
  "dials.measure": "If a piece does not measure what stands beneath it, print it again with the printer's correction.",
  "dials.no room": "What stands under “no room on it for”: write it beside the piece.",
  "dials.grain": "Paper bends easily about a line along its grain: let the grain run across a strip.",
  "dials.copy": "copy {copy}",
  "dials.spare copy": "copy {copy}, to spare",
  "dials.piece of": "piece {piece} of {pieces}",
  "dials.not on it": "no room on it for: {words}",
  "dials.one division": "one division",
  "dials.one of": "one of {divisions} divisions",
  "dials.between cuts": "between the cut ends",
  "dials.to tab": "cut end to the tab line",
  "dials.with tab": "with its tab",
  "dials.across": "across the outer circle",
  "dials.hole": "across the hole",
  "dials.along arc": "along the outer edge",
  "dials.corner to corner": "straight, corner to corner",
  "dials.across widest": "straight across its widest",
  "dials.radii": "radii of the edges",
  "dials.error over": "error over {travel}",
  "dials.begins again": "error: begins again each turn",
  "dials.in place": "{names}: how it is stuck on and read",
  "dials.many in place": {"one":"{name} and {n} more: how they are stuck on and read","other":"{name} and {n} more: how they are stuck on and read"},
  "dials.index of": "{name}: index line",
  "dials.vernier": "vernier {count}",
  "dials.vernier of": "{name}: vernier, reads {count}",
  "dials.vernier zero": "its 0 is the index line",
  "dials.blank": "{name}: blank, to try the fit first",
  "dials.closes within doubt": "closes as well as the feed is known: {error}",
  "dials.short division": "the last division is short: {short} instead of {division}, {width} wide on paper",
  "dials.long division": "the last division is long: {last} instead of {division}, a mark before it would print as one with the zero",
  "dials.starts again": "starts again at zero each turn: count whole turns, each worth {turn}",
  "dials.short division blurs": "its mark prints as one with the zero",
  "dials.rows close exactly": "{n} rows, one for each of {n} turns: closes exactly after {divisions} divisions",
  "dials.rows close within doubt": "{n} rows, one for each of {n} turns: closes as well as the feed is known; {error}",
  "dials.rows do not close": "does not close in {most} rows or fewer; with {n} rows it {error}",
  "dials.rows not reached": "the travel ends before row {n} begins: one row serves",
  "dials.travel not stated": "{travel} of travel (none stated)",
  "dials.of travel": "{travel} of travel",
  "dials.on the dial": "{length} on the dial",
  "dials.no travel stated": "{travel} (no travel stated)",
  "dials.feed doubt": "the feed itself is known to ± {off} over {over}",
  "dials.too many marks": "{marks} marks are too many to draw",
  "dials.more than a turn": "one division is more than one turn",
  "dials.marks blur": "marks {apart} apart are too close to read",
  "dials.marks close": "marks are close: {apart} apart",
  "dials.row too low": "each row is only {height} high: too low for its numbers",
  "dials.reads in in": "reads in inches",
  "dials.reads in mm": "reads in millimetres",
  "dials.under": "under {least}",
  "dials.cutting without arrow": "Cut from mark to mark, through the graduations that run over the edge. Inside circles and hollow edges first, the ends last.",
  "dial choices.even": "even",
  "dial choices.true": "true marks",
  "dial choices.rows": "{n} rows",
  "dial choices.marked chosen": "chosen",
  "dial choices.marked as asked": "as the file asks",
  "dial choices.closes": "closes exactly",
  "dial choices.closes within": "closes within the feed's ±",
  "dial choices.begins again": "begins again each turn, the last division only {size}",
  "dial choices.begins again, long": "begins again each turn, the last division {size}",
  "dial choices.each turn": "{out} each turn",
  "dial choices.over travel": "{out} over {travel}",
  "dial choices.apart": "marks {size} apart",
  "dial choices.apart close": "marks {size} apart: close",
  "dial choices.apart blur": "marks {size} apart: too close to read",
  "dial choices.row low": "a row is {size} high: too low for its numbers",
  "dial choices.too many": "too many marks to draw",
  "dial choices.more than a turn": "one division is more than a turn",
  "dial choices.signs": "Drawn at true size about the zero. + reads too much, − too little.",
  "vernier.legend": "vernier {count}",
  "vernier.reads": "reads {count}",
  "vernier.over divisions": "{parts} over {spans} divisions",
  "vernier.finer": "finer than the feed is known over {travel}",
  "vernier.stick": "Stick it on the fixed part so that it touches the dial.",
  "vernier.stick at index": "Stick it on the fixed part so that it touches the dial, its 0 where the index line would be.",
  "vernier.caption": "{wheel}: its 0 is the index line",
  "vernier.past left": "The vernier's 0 stands past {main}, the last dial mark to its left. Line {mark} meets a mark of the dial.",
  "vernier.past right": "The vernier's 0 stands past {main}, the last dial mark to its right. Line {mark} meets a mark of the dial.",
  "vernier.true size": "Drawn at its size.",
  "vernier.enlarged": "Drawn {times} times its size.",
  "vernier.smaller": "Drawn smaller than it is.",
  "scales.called": "{name} (straight scale)",
  "scales.no feed": "the feed of {wheel} is not known, so its turns have no length.",
  "scales.in pieces": {"one":"In {n} piece.","other":"In {n} numbered pieces, which butt and add up exactly."},
  "scales.blur": "Marks {apart} apart blur: choose a coarser division or fewer parts to a turn.",
  "scales.part of turn": "{part} turn ({length})",
  "scales.from mark to end": "from its first mark to its end",
  "angle scales.called swivel": "{name} (swivel scale)",
  "angle scales.called plate": "{name} (degree plate)",
  "angle scales.too large": "It is larger than the paper: {remedy}.",
  "angle scales.smaller plate": "choose a smaller radius or larger paper",
  "angle scales.smaller scale": "choose a smaller radius, a smaller range or larger paper",
  "angle scales.way clockwise": "clockwise",
  "angle scales.way anticlockwise": "anticlockwise",
  "angle scales.small at chuck end": "chuck end small",
  "angle scales.small at free end": "free end small",
  "angle scales.plate": "Degree plate for the spindle's nose: its numbers grow when the spindle is turned clockwise, seen from the tailstock, under an index on top. Spindle stopped, {off}; turn it by hand.",
  "angle scales.from 0 left": "left of 0: {sense} from above",
  "angle scales.from 0 right": "right of 0: {sense} from above",
  "angle scales.from 0 left, tapers": "left of 0: {sense} from above, {small}",
  "angle scales.from 0 right, tapers": "right of 0: {sense} from above, {small}",
  "angle scales.seen": "(chuck at the left, tool on the operator's side)",
  "angle scales.turns": "The scale turns with the part past a fixed index.",
  "angle scales.fixed": "The scale is fixed; the index turns with the part.",
  "angle scales.bare": "Made for a bare cylinder of radius {radius}.",
  "angle scales.prove": "A taper's swivel is half its included angle. Prove it on a test piece or with a sine bar before you trust it.",
  "angle scales.side left": "left",
  "angle scales.side right": "right",
  "angle scales.radius": "radius of the marked edge",
  "angle scales.range": "left and right of 0",
  "angle scales.vernier of": "{name}: vernier, reads {minutes} minutes",
  "angle scales.read the half": "read the half on the side of the reading",
  "angle scales.vernier too long": "a vernier of {parts} is too long for this radius and step",
  "start readings.turn reads": "{length} per turn",
  "start readings.turn reads diameter": "{length} of diameter a turn",
  "start readings.add": "The dial begins again at zero: count whole turns, and add the start reading of the turn to what the dial shows.",
  "start readings.turn": "turn",
  "start readings.begins at": "begins at",
  "start readings.rows": "{rows} rows of {division}, one a turn, run on: {cost}. To have them, ask for these rows in the machine's file.",
  "start readings.rows too low": "{rows} rows of {division}, one a turn, would run on: {cost}. This dial is too low for their numbers; {width} from edge to edge would do. Until then keep to the figures under “{column}”.",
  "start readings.no rows": "No round division fit for this dial comes out whole in rows of up to six turns: keep to the figures under “{column}”.",
  "start readings.rows exact": "they close exactly",
  "start readings.rows out": "{each} out a turn, {over} over {travel}",
  "start readings.come round": "Divisions of {division} come round",
  "start readings.turns": "turns",
  "start readings.divisions": "divisions",
  "start readings.out by": "out by",
  "start readings.exact": "exact",
  "start readings.under": "under {least}",
  "start readings.gears": "Gears for a dial on a shaft of its own",
  "start readings.on wheel": "on the wheel",
  "start readings.on dial": "on the dial",
  "start readings.ratio": "ratio",
  "start readings.dial turn": "dial turn reads",
  "start readings.dial turn out": "out each dial turn",
  "start readings.within": "~: within what the feed may be off by.",
  "start readings.idler": "+ reads too much. Add an idler where the sense must stay.",
  "start readings.no gears": "List the gears at hand in the machine's file to see which pair, one on the wheel's shaft and one under a dial of its own, would make the dial come out round.",
  "start readings.no pair": "No pair of the listed gears makes this dial come out round.",
  "start readings.closes exactly": {"one":"in {n} turn {divisions} exactly","other":"in {n} turns {divisions} exactly"},
  "start readings.closes": {"one":"in {n} turn {divisions}, {out} out","other":"in {n} turns {divisions}, {out} out"},
  "ring cutting.one row": "{wheel}, row {row} of {rows}",
  "ring cutting.marks": {"one":"{n} mark, one division {size}; from zero as the reading grows.","other":"{n} marks, one division {size}; from zero as the reading grows."},
  "ring cutting.last": "The last division, back to zero, is {last} instead of {division}.",
  "ring cutting.stamped": "A stamped {figure} stands for {value}.",
  "ring cutting.lengths": "Long {long}, medium {middle}, short {short}; all from the edge beside the index.",
  "ring cutting.simple": "Crank {ratio} : 1, exact: {turns} turns a division: {ways}.",
  "ring cutting.not simple": "Crank {ratio} : 1: no circle has {turns} turns exactly.",
  "ring cutting.holes": "{holes} of {circle}",
  "ring cutting.turns and holes": {"one":"{n} turn + {holes} of {circle}","other":"{n} turns + {holes} of {circle}"},
  "ring cutting.or": " or ",
  "ring cutting.compound exact forward": "Compound, exact: {first} forward, then crank and plate {second} forward{round}.",
  "ring cutting.compound exact back": "Compound, exact: {first} forward, then crank and plate {second} back{round}.",
  "ring cutting.compound forward": "Compound: {first} forward, then crank and plate {second} forward{round}; {angle} out each time, {reading} of reading when all are cut.",
  "ring cutting.compound back": "Compound: {first} forward, then crank and plate {second} back{round}; {angle} out each time, {reading} of reading when all are cut.",
  "ring cutting.round": ", which goes on by {divisions} divisions: {divisions} times round",
  "ring cutting.differential with": "Differential, exact: {holes}; gears from spindle to plate {drivers} driving {driven}, idlers so that the plate turns with the crank.",
  "ring cutting.differential against": "Differential, exact: {holes}; gears from spindle to plate {drivers} driving {driven}, idlers so that the plate turns against the crank.",
  "ring cutting.and": "{one} and {other}",
  "ring cutting.nearest": "Nearest holes of the {circle} circle, counted from zero (in the table): no mark out by more than {angle}, {reading} of reading; no error adds up.",
  "ring cutting.gear": "Gear of {teeth} as index: a detent in every tooth space.",
  "ring cutting.gear step": "Gear of {teeth} as index: go on {step} tooth spaces.",
  "ring cutting.gear detents": {"one":"Gear of {teeth} with {detents} detents, each set 1/{detents} tooth further than the last: go on {n} step of 1/{detents} tooth.","other":"Gear of {teeth} with {detents} detents, each set 1/{detents} tooth further than the last: go on {n} steps of 1/{detents} tooth."},
  "ring cutting.gear pair": "Gears of {first} and {second} on one arbor, the second carrying the first's detent: one division is {one} of {first} and {other} of {second}.",
  "ring cutting.teeth forward": {"one":"{n} tooth forward","other":"{n} teeth forward"},
  "ring cutting.teeth back": {"one":"{n} tooth back","other":"{n} teeth back"},
  "ring cutting.give dividing": "Give the dividing head's ratio and plates, or the gears at hand, in the machine's file for the holes and teeth to count; the angles serve any other way, such as a degree plate on the spindle.",
  "ring cutting.no gear": "No gear of the list, alone or with detents, divides this ring: use the angles, or a degree plate on the spindle.",
  "ring cutting.mark": "no.",
  "ring cutting.angle": "angle",
  "ring cutting.turns": "turns +",
  "ring cutting.of circle": "of {circle}",
  "ring cutting.stamp": "stamp",
  "engraving.along": "{title}: {length} along the edge",
  "engraving.rotary": "rotary axis: {length} are 360 degrees",
  "engraving.no diameter": "No dial in the file has a bare diameter: a wrap measured in paper says nothing of the metal.",
  "turns.within a turn": "The whole travel is less than one turn: the reading alone tells it.",
  "turns.nothing": "Nothing to show here: the travel holds no whole turn, and no round distance larger than its ±.",
  "turns.not here": "Not on this sheet: {wheel}. {why}",
  "turns.feed readings": "1 turn = {feed}, measured",
  "turns.feed stated": "1 turn = {feed}, as the file says",
  "turns.feed screw": "1 turn = {feed} by its nominal screw, not measured",
  "turns.feed rack": "1 turn = {feed} by its nominal rack, not measured",
  "turns.reads travel": "the dial reads the travel",
  "turns.reads diameter": "the dial reads the diameter",
  "turns.division": "1 division = {size}",
  "turns.lost motion": "lost motion {length}, {part} of a turn",
  "turns.lost motion most": "lost motion up to {length}, {part} of a turn, where it is largest",
  "turns.maker": "the maker meant {length}",
  "turns.old dial travel": "1 turn of the old dial shows {length} of travel",
  "turns.old dial diameter": "1 turn of the old dial shows {length} of diameter",
  "turns.unit of the old dial travel": "{unit} of travel, old dial",
  "turns.unit of the old dial diameter": "{unit} of diameter, old dial",
  "turns.old dial unknown": "what the old dial reads is not given, so it is not corrected",
  "turns.holds": "± (95 %) holds {parts}.",
  "turns.holds feed": "the feed",
  "turns.holds scatter": "the scatter of a position",
  "turns.holds tenth": "a tenth of a division read by eye",
  "turns.old dial on top": "Reading the old dial comes on top of the ±: how finely it is divided nobody said.",
  "turns.one side": "Come to it from one side; from either side the lost motion comes on top.",
  "turns.one side unknown": "Come to it from one side; from either side the lost motion comes on top, and it is not known.",
  "turns.beyond": "Measured over {read} alone of {travel}: beyond twice that no error and no ± is given (–). Measure further.",
  "turns.your distances": "Your distances",
  "turns.of travel": "travel",
  "turns.of diameter": "diameter",
  "turns.turns": "turns",
  "turns.dial": "dial",
  "turns.row": "row",
  "turns.old dial": "The same on the old dial",
  "turns.reads in travel": "travel it shows",
  "turns.reads in diameter": "diameter it shows",
  "turns.uncorrected": "uncorrected, out by",
  "turns.whole turns": "Whole turns",
  "turns.whole": "whole turns",
  "turns.zero is": "dial 0 is",
  "turns.add": "The dial starts again at zero each turn: count whole turns, and add the figure under “dial 0 is” to what the dial shows.",
  "turns.maker out": "maker's out by",
  "turns.out by travel": "Out by: what that dial shows more (−: less) than the true travel.",
  "turns.out by diameter": "Out by: what that dial shows more (−: less) than truly comes off, on diameter.",
  "turns.on diameter": "± on diameter",
  "turns.corrected": "Corrected over the stretch that was measured",
  "turns.counted": "Dial these, not the figures above, where a rule tells how far the slide stands from turn 0 as the movement begins: a figure is right in all of its column, to the ± of its row, and nothing is reckoned between two. Turns + what the dial then reads, {unit}. Beyond what was measured nothing here holds (–). What is not here: as above.",
  "turns.counted bare": "Turn these, not the figures above, where a rule tells how far the slide stands from turn 0 as the movement begins: a figure is right in all of its column, to the ± of its row, and nothing is reckoned between two. Beyond what was measured nothing here holds (–). What is not here: as above.",
  "turns.begun": "rule at",
  "turns.rule from to": "{from} to {to}",
  "turns.on row": "{turns} + {figure}, row {row}",
  "turns.turns alone": "{turns} turns",
  "turns.no whole turn, then": "no whole turn, then the dial reads {figure} {unit}",
  "turns.turns, then": {"one":"{n} turn, then the dial reads {figure} {unit}","other":"{n} turns, then the dial reads {figure} {unit}"},
  "turns.no whole turn, then in row": "no whole turn, then the dial reads {figure} {unit}, row {row}",
  "turns.turns, then in row": {"one":"{n} turn, then the dial reads {figure} {unit}, row {row}","other":"{n} turns, then the dial reads {figure} {unit}, row {row}"},
  "turns.in row": "{setting}, row {row}",
  "stops.touch off": "Touch the work lightly, coming forward. {zero} Do not turn back past it.",
  "stops.zero": "Dial to 0.",
  "stops.mark": "Mark the wheel there.",
  "stops.write down": "Write down what the dial reads.",
  "stops.zero or write down": "Dial to 0; one that cannot be set: write down what it reads.",
  "stops.mark too": "Without a dial, mark the wheel.",
  "stops.wind": "Go on by the turns and to the reading of the table.",
  "stops.wind to sum": "Go on by the turns of the table, then to the sum: what you wrote down and the figure.",
  "stops.wind to reading or sum": "Go on by the turns and to the reading of the table; a figure with + is added to what you wrote down.",
  "stops.lock": "Bring the stop up to the slide without moving it. Clamp the stop.",
  "stops.lock drill": "Bring the stop up without moving the drill. Clamp the stop.",
  "stops.next part": "Back by more than the lost motion, then to the stop with the same light hand: solid, and the dial as it stood.",
  "stops.first one": "Make one part, measure it, move the stop by the difference (a feeler or the dial tells how much), then make the rest.",
  "stops.none": "No stops in the file: take the turns from the sheet of turns and distances.",
  "stops.not set": "{stop}: {why}",
  "stops.no such wheel": "This handwheel is not in the file.",
  "stops.stop": "stop",
  "stops.parts": "parts",
  "stops.length": "length",
  "stops.wheel": "wheel",
  "stops.turns": "turns",
  "stops.dial reads": "then the dial reads",
  "stops.dial goes on": "then the dial goes on by",
  "stops.dial reads or goes on": "then the dial reads, or goes on by (+)",
  "stops.counts in row": "{counts}, row {row}",
  "stops.turns in row": "{turns} + {figure}, row {row}",
  "stops.by stop": "repeats, by stop",
  "stops.by dial": "repeats, by dial",
  "stops.lost motion": "lost motion",
  "stops.first part": "first part",
  "stops.wanted": "wanted within",
  "stops.held by": "held by",
  "stops.both": "stop, dial",
  "stops.stop alone": "stop alone",
  "stops.neither": "neither",
  "stops.not the dial": "?, not the dial",
  "stops.not measured": "?",
  "stops.beyond": "beyond travel",
  "stops.no dial means": "–: no dial, the turns say all.",
  "stops.sum means": "+: the dial cannot be set to 0, or nobody said that it can. Add the figure to what it read at the touch, counting a whole turn each time it comes round to that; of a sum of more than one turn of it take a turn off: {turns}.",
  "stops.alike means": "Repeats, by stop or by dial: how closely parts come alike, each come to from the same side.",
  "stops.alike unknown": "How closely parts come alike was not measured: read the same places over two runs or more, or measure every part.",
  "stops.lost motion means": "Coming from either side would add the lost motion: never do.",
  "stops.lost motion unknown": "Lost motion is not known: come from one side only.",
  "stops.first part means": "First part: so far its length may be off until it is measured and the stop moved.",
  "stops.unknown means": "? is not known. Repeats: read the same places over two runs or more, or measure every part. Lost motion: come from one side only.",
  "stops.wanted means": "Wanted within: from the shortest part to the longest.",
  "stops.held by means": "Held by: which of the two keeps the parts within that.",
  "stops.stop alone means": "Stop alone: the dial alone does not hold it, use the stop.",
  "stops.neither means": "Neither: as measured, the tolerance is not held. Leave a little, measure each part, finish by hand.",
  "stops.measure each": "Whether the tolerance is held was not measured. Measure each part.",
  "stops.measure each means": "“?”: whether the tolerance is held was not measured. Measure each part.",
  "stops.first part off": "{stops}: the first part may be off by more than is wanted. Measure it and move the stop before the next.",
  "stops.beyond means": "Beyond travel: set the stop in two steps or move the work.",
  "stops.corrected": "Corrected over the stretch that was measured: {wheel}",
  "stops.begun": "rule at",
  "stops.by the rule": "Where a rule tells how far the slide stands from turn 0 as the movement begins: a figure is right in all of its column, to the ± of its row, and nothing is reckoned between two. Beyond what was measured nothing here holds (–). Stops that are not here: as above.",
  "stops.turns alone": "Figures: turns of the wheel.",
  "stops.turns and reading": "Figures: turns + what the dial then reads, {unit}.",
  "stops.turns and sum": "Figures: turns + what the dial goes on by beyond them from what it read at the touch, {unit}; a sum of more than one turn of it ({turn}) is read less one turn.",
  "stops.between": "between",
  "stops.blocks": "A gauge block or drill shank at the stop",
  "stops.blocks how": "Measure the shank, do not trust its name. Take it out and the travel is longer by just its size: two lengths or depths from one stop. Turns + what the dial goes on by:",
  "stops.spindle": "Repeat parts from bar, with a stop inside the spindle",
  "stops.spindle 1": "{off}. Lock the stop in the bore so that it cannot creep: a plug with a drawbolt, or a rod held at the far end.",
  "stops.spindle 2": "Push the blank against it, close the chuck or collet, and tighten: jaws that draw in pull it off the stop, by about the same if closed the same way.",
  "stops.spindle 3": "Face the first part and set the dial to 0 there, coming forward. All lengths count from this face.",
  "stops.spindle 4": "Cut every shoulder from the same side to the same reading; measure the first, the third, then every tenth.",
  "stops.spindle 5": "No bar may stand out behind: unsupported it bends and whips. Cut blanks that end inside.",
  "tapers.seen from above": "Seen from above, you stand at the foot of the picture. The arrow: which way to swing, and by how much: the swing of the tables.",
  "tapers.free end small": "free end small",
  "tapers.chuck end small": "chuck end small",
  "tapers.top slide clockwise": "top slide: swing clockwise",
  "tapers.top slide anticlockwise": "top slide: swing anticlockwise",
  "tapers.headstock clockwise": "headstock: swing clockwise",
  "tapers.headstock anticlockwise": "headstock: swing anticlockwise",
  "tapers.yours": "Your tapers",
  "tapers.cut": "To cut and to prove them",
  "tapers.usual": "Standard and usual tapers",
  "tapers.one in": "1 : {n}",
  "tapers.lathe centre": "lathe centre, 60°",
  "tapers.taper pin": "taper pin 1:48",
  "tapers.taper": "taper",
  "tapers.ratio": "1 : n",
  "tapers.per foot": "on diameter,",
  "tapers.in per foot": "in per foot",
  "tapers.per length": "{unit} per {length}",
  "tapers.included": "included",
  "tapers.swing": "swing",
  "tapers.indicator": "indicator rises",
  "tapers.turns of": "turns of the {wheel}",
  "tapers.for rise": "for that rise",
  "tapers.sine bar": "{length} sine bar",
  "tapers.wrong": "0.1° wrong: on diameter",
  "tapers.length": "length",
  "tapers.sizes": "large, small",
  "tapers.along": "along the slide",
  "tapers.goes in": "fall on radius",
  "tapers.pins": "two pins {length} apart differ by",
  "tapers.over": "tailstock over by",
  "tapers.of work": "{unit} per {length} of work",
  "tapers.settings": "2 settings",
  "tapers.too long": "2 settings: the slide goes only {travel}. Turn it in two, or set the tailstock over where that is given.",
  "tapers.too steep": "–: Not by setting the tailstock over. Beyond about 8° included angle plain centres bear on the edges of their holes alone (common practice).",
  "tapers.dial from 0": "Below the turns: whole turns + what the dial then reads, set to 0 where the slope begins.",
  "tapers.dial goes on": "Below the turns: whole turns + what the dial goes on by beyond them, from what it read where the slope begins; a sum of more than one turn of it ({turn}) is read less one turn.",
  "tapers.how cut": "Fall on radius: on diameter it is twice as much. Pins: two of them with their centres so far apart fill a gauge of the included angle. Tailstock: for each such length of the work between centres, not of the taper alone.",
  "tapers.how": "Swing = half the included angle. Indicator: in the tool post against a test bar or finished taper, carriage moved along the axis, not along the slide.",
  "tapers.sources": "Standard tapers from: Dimensions of Standard Tapers (vintagemachinery.org), johnfsworkshop.org, Lobben p. 477, US Army OD1645. * last figure from memory.",
  "tapers.gauges": "Paper gauges of the swing",
  "tapers.cut gauge": "Cut on the thin line itself: here the edge is the gauge. Scissors are good to about a tenth of a degree, so prove the setting with an indicator.",
  "tapers.gauge": "{name}: swing {angle}°",
  "tapers.gauge alone": "{angle}°",
  "tapers.gauge rises": "{name}: right edge {rise} higher than the left over {length}",
  "tapers.no gauge": "No paper gauge of {names}: under {least}° of swing scissors are too coarse. Set it by the indicator.",
  "tapers.top slide, swing clockwise": "top slide: swing clockwise",
  "tapers.top slide, swing anticlockwise": "top slide: swing anticlockwise",
  "tapers.headstock, swing clockwise": "headstock: swing clockwise",
  "tapers.headstock, swing anticlockwise": "headstock: swing anticlockwise",
  "threads.left out": {"one":"One larger thread is left out: its tapping drill is over {largest}, the largest of this machine.","other":"{n} larger threads are left out: their tapping drills are over {largest}, the largest of this machine."},
  "threads.number drill": "#{number}",
  "threads.series metric coarse": "Metric coarse",
  "threads.series metric fine": "Metric fine",
  "threads.series UNC": "Unified coarse, UNC",
  "threads.series UNF": "Unified fine, UNF",
  "threads.series BA": "British Association, BA",
  "threads.series BSW": "British Standard Whitworth, BSW",
  "threads.series BSF": "British Standard Fine, BSF",
  "threads.series ME": "32 and 40 per inch, Whitworth form",
  "threads.thread": "thread",
  "threads.size": "size",
  "threads.pitch": "pitch",
  "threads.drill for": "hole {percent} %",
  "threads.drill": "drill",
  "threads.full": "full",
  "threads.rod": "rod",
  "threads.turns": "turns",
  "threads.tight": "! tight: this drill makes more than {most} % of a full thread, hard on a tap turned by hand (common practice). Drill for {percent} % instead.",
  "threads.next drill": "+ none is published: the next usual drill above the hole of {percent} %.",
  "threads.from memory": "* size from memory, not seen in print: measure the tap.",
  "threads.how": "Hole {percent} % = size − {share} × a full thread's depth on diameter, which is 1.299 pitches (60°), 1.281 (Whitworth) or 1.2 (BA); take the nearest drill, the larger in hard metal. Drill: the one usually published, and how much of a full thread it makes. Rod for the die = size − pitch ÷ 10 (common practice). Turns: of tap or die for that depth.",
  "threads.nearest in inches": "Where only a metric drill is published for an inch thread or BA: the nearest that is sold in inches.",
  "threads.sources": "Sizes and drills from: {sources}.",
  "threads.source DIN 76": "DIN 76-1 (from memory)",
  "threads.source library": "an open-source CAD library's hole table (metric drills there after ISO 2306, Whitworth after BS 1157)",
  "threads.source chart": "a drill and tap chart, 75 % column",
  "threads.source memory": "memory: size not seen in print",
  "threads.source BA": "a fastener dealer's chart of BA threads",
  "threads.source Whitworth": "a fastener maker's Whitworth geometry",
  "plan.knife tool": "knife tool",
  "plan.boring tool": "boring tool",
  "plan.face off": "face off {depth}",
  "plan.face to length": "face to {length} long",
  "plan.face with slide back": "{wheel} back at its 0 and locked. Feed from the outside in; then leave the {facing} locked where it stands.",
  "plan.face with slide close": "{wheel} close up to the work and locked. Feed from the outside in; then leave the {facing} locked where it stands.",
  "plan.face and lock": "Feed from the outside in. Lock the slide that sets the depth.",
  "plan.face counts": "Sizes count from the finished face; before a minus stands what is still to come off.",
  "plan.face measured": "The last cut: stop, measure the whole length. What is over is what is left to take off, whatever the dial says.",
  "plan.face measured, reckoned": "The last cut: stop, measure the whole length. What is over is what is left to take off, whatever the dial says: go on by what is over {times}, {counted}.",
  "plan.turn long": "turn to {size}, {length} long",
  "plan.turn from to": "turn to {size}, from {from} to {to}",
  "plan.shoulder long": "shoulder to {size}, {length} long",
  "plan.shoulder from to": "shoulder to {size}, from {from} to {to}",
  "plan.bore deep": "bore to {size}, {depth} deep",
  "plan.bore from to": "bore to {size}, from {from} to {to} deep",
  "plan.outward": "outward, towards you",
  "plan.inward": "inward",
  "plan.size with limits": "{size} ({least} to {most})",
  "plan.come to, lost motion unknown": "Come to every reading {sense}; if you overshoot, go back half a turn (the lost motion is not known) and come again.",
  "plan.come to, whole turn back": "Come to every reading {sense}; if you overshoot, go back a whole turn (the lost motion is {lost} of a turn) and come again.",
  "plan.come to": "Come to every reading {sense}; if you overshoot, go back half a turn (the lost motion is {lost} of a turn) and come again.",
  "plan.shoulder edge": "The tool's edge lies square to the axis, so that the shoulder comes out square.",
  "plan.bore first cuts": "The first cuts take only what a drill left narrower further in.",
  "plan.bore dial backwards": "Outward the dial runs backwards: count turns and divisions against its numbers.",
  "plan.blade": "blade {width} wide",
  "plan.part off": "part off {length} long",
  "plan.part note": "At {diameter} diameter. Close to the chuck, slides locked, steady hand. Never catch the part by hand.{wet}",
  "plan.groove": "groove {width} wide to {size}, from {from} to {to}",
  "plan.groove note": "Feed straight in, steadily, to the reading; do not dwell.{wet}",
  "plan.countersink": "countersink, 90°",
  "plan.boring tool at 45°": "boring tool, its edge at 45°",
  "plan.45° tool": "45° tool",
  "plan.edge at the end": "the end",
  "plan.edge at": "the edge at {at}",
  "plan.chamfer in bore": "chamfer {size} at 45°, {edge}, in the bore",
  "plan.chamfer": "chamfer {size} at 45°, {edge}",
  "plan.countersink note": "Touch the edge of the hole all round, then go on by the reading until its mouth is {mouth} wide; slowly, it chatters otherwise.",
  "plan.chamfer towards chuck": "Touch the edge with the middle of the slanting side, then go on towards the chuck by the reading.",
  "plan.chamfer from chuck": "Touch the edge with the middle of the slanting side, then go on away from the chuck by the reading.",
  "plan.pinching knurling tool": "knurling tool that pinches the work",
  "plan.knurling tool": "knurling tool",
  "plan.knurl from to": "knurl {pitch}, from {from} to {to}",
  "plan.knurl long": "knurl {pitch}, {length} long",
  "plan.knurl places, begin": "All places are those of the wheel's edge towards the chuck: touch the face with that edge. Begin where its other edge stands at {at}: mark that place first (with the wheel's width in the job's file a reading for it stands here).",
  "plan.knurl places": "All places are those of the wheel's edge towards the chuck: touch the face with that edge.",
  "plan.knurl rise": "It raises the diameter by about {rise} (common practice): prove the pattern on one turn of the work by hand before you start the motor.",
  "plan.knurl oil": "Oil, slow, one firm setting; brush chips off only with the machine stopped.",
  "plan.no tool": "no tool",
  "plan.taper tool": "turning tool, exactly at centre height",
  "plan.taper": "taper {large} to {small} in {length}, {towards}",
  "plan.taper from": "taper {large} to {small} in {length}, from {at}, {towards}",
  "plan.thin towards the end": "free end small",
  "plan.thin towards the chuck": "chuck end small",
  "plan.taper back": "Readings marked back lie before 0: there the tool is still clear at the beginning, and cuts only further in.",
  "plan.taper prove": "Prove the angle after the second cut: measure at both ends. When the taper is done, set back what was swung, and prove it.",
  "plan.tip from face": "the tip stands {at} from the face",
  "plan.tip at face": "the tip stands at the face",
  "plan.clockwise": "clockwise",
  "plan.anticlockwise": "anticlockwise",
  "plan.towards you": "towards you",
  "plan.away from you": "away from you",
  "plan.swing top slide": "First swing the top slide {sense}, seen from above, by {degrees}°, half the included angle, and wind it back so far that its whole stroke lies before it. Only then touch and set what follows, in this order: {begin} while the diameter is touched. Feed with the top slide alone.",
  "plan.swing headstock": "First swing the headstock {sense}, seen from above, by {degrees}°, half the included angle. Only then touch and set what follows: {begin} while the diameter is touched. Feed along the bed. What is square to the work is not square to the bed meanwhile: face, drill and part nothing until it is set back, and proved on a test bar.",
  "plan.set tailstock over": "First set the tailstock over by {over} {towards} (by the sine, for {between} between the centres). Grease the centre. Only then touch and set what follows: {begin} while the diameter is touched. Afterwards set it back and prove it on a test bar.",
  "plan.clamped": "Clamp the part, on packing that the drill may go into; never hold it in the hand.",
  "plan.holes alike": "{what}, in {n} holes",
  "plan.some holes": "{what}, in {n} of the {of} holes",
  "plan.named holes": {"one":"{what}, in hole “{name}”","other":"{what}, in {n} holes “{name}”"},
  "plan.some named holes": "{what}, in {n} of the {of} holes “{name}”",
  "plan.other holes": {"one":"{what}, in another hole","other":"{what}, in {n} other holes"},
  "plan.holes in turn": "In {n} holes: each tool in all of them before the next. Bring each mark under it and clamp again. The zero of the first serves for all while the table, and what the part lies on, stay as they are; else touch again.",
  "plan.holes on the axis": "In {n} holes: each tool in all of them before the next. Set the part again for each, its mark true to the axis, and clamp it.",
  "plan.centre drill": "centre drill {pilot}",
  "plan.centre drill tool": "centre drill, pilot {pilot}",
  "plan.centre drill note": "In until the cone is about {mouth} wide, {depth} from where the tip touches. Its tip breaks easily: no force, clear it often, and never run it slowly and hard.",
  "plan.drill": "drill {size}, {depth} deep",
  "plan.drill named": "{name} ({size})",
  "plan.ream": "ream {size}, {depth} deep",
  "plan.twist drill": "twist drill",
  "plan.twist drills": "twist drills",
  "plan.reamer": "reamer",
  "plan.by hand, no reverse": "Turn the spindle by hand, {off}: the file gives neither a reversing motor nor a clutch.",
  "plan.drills in turn": "One after the other: {drills}, each touched off again; all at the speed of the largest, which the smaller ones bear too.",
  "plan.clear drill": "Draw the drill out to clear it each time it has gone in by its own diameter.",
  "plan.drill depth counts": "The depth counts from where the full diameter enters; the point goes {tip} deeper.",
  "plan.ream note": "Ream in one steady pass, and never turn it backwards.{wet}",
  "plan.tap hole": "Hole for {share} % of full depth: {hole}.",
  "plan.tap hole gives": "The hole of {hole} gives {share} %.",
  "plan.tap edge": "Break its edge to {size} first.",
  "plan.tap order": "Go in with the taper tap, then the second. Mark the last one {mark} from its tip: deep enough where the mark meets the face. Its lead, {lead}, goes beyond the full thread.",
  "plan.die rod": "Rod about {rod}, this one is {now}; chamfer its end at 45° down to about {core}, so that the die starts square.",
  "plan.die shoulder": "A shoulder stands {room} beyond: count the turns, and feel for it. For the last turns turn the die over, its side without lead first.",
  "plan.tap": "tap {thread}, {depth}",
  "plan.die": "thread by die, {thread}, {depth}",
  "plan.tap in the drill": "tap, held square by the drill's chuck",
  "plan.tap in the tailstock": "tap, held square by the tailstock's chuck",
  "plan.die holder": "die in a holder that slides on the tailstock barrel",
  "plan.thread by hand": "{off}, belt off or slack: turn the spindle by hand at the chuck or pulley. Never by power.",
  "plan.tap turns": "{turns} turns from the first bite for {length} of full thread and the {lead} of its lead.",
  "plan.thread turns behind": "{counted} The thread begins {begins} behind the face, where the narrow hole does.",
  "plan.thread turns": "{turns} turns for {length}.",
  "plan.thread how": "{begun} Press lightly behind it for the first two turns, then it draws itself in and the barrel only follows. Half a turn on, a quarter back to break the chip; after {halfTurns} turns ({half}) back out and clear it.{wet}",
  "plan.thread how drill": "{begun} Press lightly behind it for the first two turns, then it draws itself in and the quill only follows. Half a turn on, a quarter back to break the chip; after {halfTurns} turns ({half}) back out and clear it.{wet}",
  "plan.tap binds": "If it binds: do not force it. Turn back at once, clear the chips, try again lightly; if it still binds the hole is too small or the tap has reached its floor.",
  "plan.die binds": "If it binds: do not force it. Turn back at once, clear the chips, try again lightly; if it still binds the rod is too thick or the die stands askew.",
  "plan.in the chuck": "in the chuck",
  "plan.in the chuck by": "in the chuck by its {size}",
  "plan.in chuck and centre": "{chuck}, its free end on a greased centre",
  "plan.between greased centres": "between greased centres, driven by a carrier",
  "plan.few mm": "a few hundredths of a millimetre",
  "plan.few in": "a few thousandths of an inch",
  "plan.turn round": "turn it round: {out} out, {by}",
  "plan.hold anew": "hold it again: {out} out, {by}",
  "plan.jaws bridge": "The jaws begin over what is thinner: see that they close all round from {from} behind the free end.",
  "plan.hold safely": "{still}; key out of the chuck before anything else.",
  "plan.carrier sheet": "Lay thin sheet brass or copper under the carrier's screw: it sits on a finished surface.",
  "plan.jaws sheet": "Lay thin sheet brass or copper between jaws and the finished surface, and prove it on an indicator: a chuck is out by {out} each time.",
  "plan.centre greased": "Tailstock and barrel locked, the centre greased and just free of shake; try it again when the work gets warm.",
  "plan.centres in line": "Centres clean and in line: a light cut at both ends must measure the same. The one in the tailstock is greased, and just free of shake; try it again when the work gets warm.",
  "plan.turn round batch": "First all parts up to here; then all of them from here on, turned round.",
  "plan.turn round stop": "The stop in the spindle is set again for this end: all parts against it stand out alike.",
  "plan.turn round lengths": "Lengths count from the new end's finished face from here on.",
  "plan.to wet": " Cutting fluid: {what}.",
  "plan.drill coarsely": "Fine chips of {material} burn: fed at {feed} a revolution, the coarsest in print for this drill ({sources}).",
  "plan.this cut": "{rule} This cut: {feed}.",
  "plan.ream coarsely": "{rule} A reamer takes little: a sharp one, fed without a halt, and straight out of the hole.",
  "plan.plunge coarsely": "Touch with the power off, the work turned by hand: a tool that rubs lights chips. Once in, feed on without a halt to the end.",
  "plan.cut coarsely": "Touch with the power off, the work turned by hand: a tool that rubs lights chips. All cuts are of one depth, since a thin last one makes fine chips; none is taken twice. Feed on without a halt to the end, and have the tool clear before you stop.",
  "plan.start slides drill": "Table and column clamped; quill free, no shake in it.",
  "plan.start slides": "Slides firm but free over their whole travel: gibs just taken up. Slides not in use locked.",
  "plan.start held drill": "Part clamped to the table or in a clamped vice, on packing; drill runs true.",
  "plan.start held": "Work tight; turned by hand through a whole turn, with the slides at both ends of every cut: nothing touches jaws, centre or post.",
  "plan.still motor": "Machine stopped, plug out",
  "plan.still treadle": "Machine stopped, foot off the treadle",
  "plan.still hand": "Machine stopped, hand off the crank",
  "plan.start isolated": "{still}.",
  "plan.start tool": "Tool sharp, at centre height, little overhang, and tight.",
  "plan.start stops": "Stops set where the plan says stop, tried with the tool clear of the work.",
  "plan.start wet": "Cutting fluid: {what}; brush at hand, no rags.",
  "plan.start belts": "Belts where the first step says, tight enough to drive; belt guard closed.",
  "plan.start clear": "Chuck key out, spanners off, safety glasses on; no gloves, rings, loose sleeves or hair.",
  "plan.belt slip": "Some leave the belt just so slack that it slips before a tool breaks. That is common practice, not reckoned here: a slack belt also jumps, burns and stops without warning, so it replaces neither light cuts nor a hand at the switch.",
  "plan.chuck limit unknown": "The file does not say how fast the chuck may run: read its marking, and never go above it.",
  "plan.zero": "{wheel}: {touch}; {set}.",
  "plan.zero written down": "leave its dial alone and write down what it reads: {label} = __________, turn 0",
  "plan.zero marked": "mark where the handwheel stands: turns count from there",
  "plan.zero set": "set its dial to 0",
  "plan.lay the rule": "The {wheel} is worn: lay a rule now, and whenever this is touched again, before it moves on. It stands ________ {unit} from where it stood at turn 0 of its readings ({where}).",
  "plan.touch diameter": "Touch the {size} diameter lightly, coming inward",
  "plan.touch bore": "Touch the bore of {size} lightly, coming outward",
  "plan.touch face": "Touch the finished face lightly",
  "plan.touch end": "Touch the end as it is lightly",
  "plan.touch face with blade": "Touch the finished face lightly with the blade's chuck-side edge",
  "plan.touch end with blade": "Touch the end as it is lightly with the blade's chuck-side edge",
  "plan.touch raw end": "Touch the raw end lightly",
  "plan.touch edge": "Touch the edge lightly",
  "plan.touch first thread": "Where the first thread bites",
  "plan.touch mouth": "Where the full diameter just enters the finished face",
  "plan.touch mouth as it is": "Where the full diameter just enters the end as it is",
  "plan.touch begin": "With the tip where the cut begins (the reading “begin at”, where one stands below), everything else locked",
  "plan.touch tip": "Where its tip touches the end",
  "plan.readings from": "{wheel}, from {zero}",
  "plan.readings from, step": "{wheel}, from {zero} (step {number})",
  "plan.from diameter": "the {size} diameter",
  "plan.from bore": "the bore of {size}",
  "plan.from face": "the finished face",
  "plan.from end": "the end as it is",
  "plan.from raw end": "the raw end",
  "plan.from edge": "the edge",
  "plan.from mouth": "where the full diameter enters",
  "plan.from first thread": "where the first thread bites",
  "plan.from begin": "where the cut begins",
  "plan.from tip": "where the tip touches",
  "plan.wind back": "It goes on by {by} of its {travel}: wind it well back before you touch.",
  "plan.other diameter written": "Not {size}? Measured less: take the difference off what you write down. Measured more: add it.",
  "plan.other diameter written, reckoned": "Not {size}? The difference {times} = ________ {counted}. Measured less: take it off what you write down. Measured more: add it.",
  "plan.other diameter set": "Not {size}? Measured less: set the difference instead of 0. Measured more: set the dial that much short of 0.",
  "plan.other diameter set, reckoned": "Not {size}? The difference {times} = ________ {counted}. Measured less: set it instead of 0. Measured more: set the dial that much short of 0.",
  "plan.other diameter, turns": "Not {size}? The difference {times} = ________ {counted}. Measured more: every count of turns from here is more by that. Measured less: less.",
  "plan.other bore, turns": "Not {size}? The difference {times} = ________ {counted}. Measured less: every count of turns back from here is more by that. Measured more: less.",
  "plan.back": "back {turns}",
  "plan.no dial": "no dial",
  "plan.sums on fixed dials": "Dials that cannot be set to 0: at the touch write down what the dial reads (S1, S2 …). For a reading count a whole turn each time the dial comes round to that figure again, then go on to the sum. One whole turn is: {turns}. A sum of more than a turn is read less one turn, one below 0 plus one turn.",
  "plan.comes out": "Comes out: {sizes}.",
  "plan.promised diameter": "diameter {size}",
  "plan.promised length": "length {size}",
  "plan.promised by the rule": "where it is dialled by the rule",
  "plan.promised depth": "depth {size}",
  "plan.promised small end": "small end {size}",
  "plan.promised large end": "large end {size}",
  "plan.more than the tolerance": "more than the tolerance: measure again before the last cut",
  "plan.worst adds": "“Comes out” and “alike” add up at the worst: what feed and slide may be off by, each reading to a tenth of a division, and by common practice {touch} for each light touch of the tool, {gauge} for a micrometer.",
  "plan.worst adds, depth": "A depth adds {entered} for the eye that sees the full diameter enter.",
  "plan.parts alike to": "parts alike to {to}",
  "plan.feed of a drill": "{drill}: {count}",
  "plan.feed by": "Feed by the {wheel}: {count}.",
  "plan.minutes": {"one":"{n} minute","other":"{n} minutes"},
  "plan.hours": "{hours} hours",
  "plan.within": "{least} to {most}",
  "plan.column done": "done",
  "plan.column measured": "measured",
  "plan.corrected": "Worn slide: dial the row in which the rule stood at the touch, nothing between two rows; elsewhere it is not corrected. ± counts from the touch.",
  "plan.measured before": "Measured before the last cut? Go on by what is left alone.",
  "plan.measured before, promised": "Measured before the last cut? Go on by what is left alone: “Comes out” says how good that is.",
  "plan.corrected movement": "{distance} by the {wheel}, ± {within}",
  "plan.corrected movement, step": "{distance} by the {wheel}, ± {within}; touched in step {number}",
  "plan.column rule": "rule at the touch",
  "plan.elsewhere": "elsewhere",
  "plan.by the rule": "by the rule",
  "plan.column so that it reads": "so that it reads",
  "plan.column and": "and",
  "plan.set by measuring": "set by measuring",
  "plan.feed in at, number": "feed in at, {number}",
  "plan.go on to, number": "go on to, {number}",
  "plan.place begin": "begin at",
  "plan.place stop": "stop at",
  "plan.place plunge": "feed in at",
  "plan.each time in to": "each time in to",
  "plan.place depth": "in to",
  "plan.drill to": "drill {diameter}, to {depth}",
  "plan.rough cut": "rough {number}",
  "plan.once more": "once more",
  "plan.last cut": "last cut",
  "plan.by hand": "by hand, power off",
  "plan.no speed known": "no speed known",
  "plan.do not run": "do not run",
  "plan.set the motor": "to be set at the motor",
  "plan.as fast as a hand": "as fast as a hand can feed it",
  "plan.belt kept": "at the belt of step {step}: not moved for so little",
  "plan.slower than it bears": "slower than the material would take",
  "plan.held by a limit": "held by a limit",
  "plan.locked, written down": "{wheel}, locked where it stands: write down what its dial reads: {label} = __________, turn 0. Lengths count from this face.",
  "plan.locked, marked": "{wheel}, locked where it stands: mark where its handwheel stands, turns count from there. Lengths count from this face.",
  "plan.locked, set": "{wheel}, locked where it stands: set its dial to 0. Lengths count from this face.",
  "plan.sum bore": "Before the last cut: {diameter} − measured ________ = ________ {unit} to go",
  "plan.sum outside": "Before the last cut: measured ________ − {diameter} = ________ {unit} to go",
  "plan.go on": "Go on by that.",
  "plan.go on, reckoned": "Go on by that {times} = ________ {counted}.",
  "plan.on the dial": "on the dial ({unit})",
  "plan.in turns": "turns",
  "plan.measure the others too": "The same on every other part: the tool is touched off again.",
  "plan.dial at the right size": "The dial at the right size: ________ ; the other parts go to that without measuring half way.",
  "plan.mend sum": "After the last cut measure again. If the size is right: what the dial reads less the sum above is ________ (mind its sign); add that to every later sum of this tool.",
  "plan.mend zero": "After the last cut measure again. If the size is right, set the dial to what stands above ({reading}) without moving the slide: every later reading of this tool is then true.",
  "plan.mend zero, others too": "After the last cut measure again. If the size is right, set the dial to what stands above ({reading}) without moving the slide: every later reading of this tool is then true; the other parts go straight to that, without measuring half way.",
  "plan.mend zero, by the rule": "After the last cut measure again. If the size is right, set the dial to your row's figure without moving the slide: your rows in later steps of this tool are then true, to their ±.",
  "plan.mend zero, worn": "After the last cut measure again. If the size is right, set the dial to what stands above ({reading}) without moving the slide: later readings of this tool then count from a true size. Over a longer way on the worn slide measure again.",
  "plan.others go straight": "The other parts go straight to that, without measuring half way.",
  "plan.done on part": "Done on part",
  "plan.done on part, more": "Done on part, {from} to {to} on another sheet",
  "plan.drawn without": "Refused, and not drawn: {steps}. What the other steps make would be gone by it.",
  "plan.readings are": "Large figures: what the dial shows, the one printed for this machine and stuck on before you begin.",
  "plan.turns are whole": "Turns: whole ones from the zero.",
  "plan.turns are": "Turns: from the zero.",
  "plan.counts are": "A count in feeding is one second, “one and two and”.",
  "plan.readings on old dials": "Where it says old dial: what the dial that is on the wheel shows; what it is out by is reckoned with, to the feed of the file. What reading it adds comes on top of every ±.",
  "plan.belt moved sign": "White on black: the belt is moved before this step, {off}.",
  "plan.for several steps": "For several steps",
  "plan.see for several steps": "Under “{heading}”: {signs}.",
  "plan.step of the file": "step {inFile} of the file",
  "plan.row": "row {row}",
  "plan.column turns": "turns",
  "plan.column dial": "dial",
  "plan.before the first chip": "Before the first chip",
  "plan.refused all the same": "This job is refused and was printed all the same; the first page says why. Do not cut by it until that is put right.",
  "plan.refused all the same, for": "This job is refused and was printed all the same, for {steps}; the first page says why. Do not cut by it until that is put right.",
  "plan.bar": "bar {diameter}",
  "plan.tube": "tube {diameter} by {bore}",
  "plan.bar long": "{length} long",
  "plan.bar out": "{out} out",
  "plan.bar held chuck and centre": "its end held by a centre",
  "plan.bar held between centres": "between centres",
  "plan.belts called": "Belts as on the belt card: {key}.",
  "plan.bar against a stop": "against a stop in the spindle",
  "plan.bar turned against a stop": "turned round: against a stop in the spindle",
  "plan.parts": {"one":"{n} part","other":"{n} parts"},
  "plan.step goes on": "The step goes on: read to its end before you cut.",
  "plan.steps": {"one":"step {steps}","other":"steps {steps}"},
  "plan.reordered": "Some steps are done in another order than the job's file has them: so the belt is moved less often, and nothing else changes.",
  "plan.nothing against": "Nothing stands against this job, as far as the files say.",
  "plan.refused": "Refused",
  "plan.take care": "Take care",
  "plan.tools in the post": "{count} tools follow each other in the post ({tools}). A tool that is taken out and put back is touched off again, unless its holder comes back to just the same place.",
  "plan.one tool": "One tool does it all: as long as it is not moved, nothing is touched off again. Every part gets the same readings.",
  "plan.swung on a bar": "What is swung for {steps} and set back takes every zero along: touch off again for each part; of a bar the next one is not there before the last is parted off.",
  "plan.swung": "What is swung for {steps} and set back takes every zero along: do it on all parts in one go, or touch off again for each part.",
  "plan.others touched anew": "Where a tool is touched off again measure before the last cut on every part. What keeps its zero goes to the readings that the first part taught: measure the first, the third, then one in ten.",
  "plan.others straight": "From the second part on no cut is measured half way: go to the readings that the first part taught. Measure the first, the third, then one in ten, and whenever a tool was touched.",
  "plan.batch by operation": "By operation: each step on all parts, then the next. A chuck never takes a part back quite true, so that steps which must run true to each other stay in one setting.",
  "plan.batch to turning round": "Part by part up to where it is turned round, for all parts; then part by part from there: what is cut in one setting runs true to itself.",
  "plan.batch part by part": "Part by part: each from the first step to the last, so that its surfaces run true to each other.",
  "plan.parts alike": "{count} parts alike",
  "plan.clamp against stops": "Clamp each part against the same stops.",
  "plan.length zeros fresh": "each stands out a little differently: touch its raw end and set the length zero again on every part",
  "plan.bar drawn out": "Bar through the spindle: with every part it gets shorter, and no stop behind it serves. Draw it out each time until its end meets a stop ahead of it that always stands in the same place (in the tailstock, or a block), and take that away. Without one {fresh}.",
  "plan.blanks against stop": "Push each blank against the stop in the spindle and close the chuck the same way: the length zeros hold for every part.",
  "plan.blanks without stop": "Blanks without a stop in the spindle: {fresh}, or hold it against a stop.",
  "plan.turned round, stop": "Turned round, set the stop once more; then these length zeros hold for every part as well.",
  "plan.turned round, same": "Turned round, the same holds for the other end.",
  "plan.between centres lengths": "Between centres each part lies as deep as its centre holes are: touch its face and set the length zero again on every part, whatever stop there is.",
  "plan.way part": "part by part",
  "plan.way operation": "by operation",
  "plan.way one": "one part",
  "plan.column way of working": "way of working",
  "plan.column belt changes": "belt changes",
  "plan.column under the tool": "cutting",
  "plan.column minutes": "minutes",
  "plan.column handling": "handling",
  "plan.column tools and": "tools and",
  "plan.column holding": "holding",
  "plan.column belts": "belts",
  "plan.column all": "all",
  "plan.belts and time": "Belts and time",
  "plan.belt stays": "The belt stays where it is from the first step to the last.",
  "plan.belt changes": {"one":"{n} belt change from the first step to the last: a hand under the cover, {off}.","other":"{n} belt changes from the first step to the last; each is a hand under the cover, {off}."},
  "plan.reckoned": "Reckoned with the least published feed at these speeds; the hands by our own figures, unhurried: {belt} minutes a belt change, {tool} a tool set and touched off, {part} a part held, {pass} a pass, {measure} a measurement.",
  "plan.reckoned holes": "Each next hole of several: {hole} more.",
  "plan.uncounted": {"one":"{n} step without a feed or a speed is left out.","other":"{n} steps without a feed or a speed are left out."},
  "plan.trial tells": "The first part takes longer; a trial tells better.",
  "plan.slower": {"one":"Slower is allowed: with {steps} at {position} ({rpm} rpm) as well, cutting one part takes {more} more and saves {n} belt change.","other":"Slower is allowed: with {steps} at {position} ({rpm} rpm) as well, cutting one part takes {more} more and saves {n} belt changes."},
  "plan.slower, less in all": {"one":"Slower is allowed: with {steps} at {position} ({rpm} rpm) as well, cutting one part takes {more} more and saves {n} belt change: less time in all when you work part by part.","other":"Slower is allowed: with {steps} at {position} ({rpm} rpm) as well, cutting one part takes {more} more and saves {n} belt changes: less time in all when you work part by part."},
  "plan.slower, no time saved": {"one":"Slower is allowed: with {steps} at {position} ({rpm} rpm) as well, cutting one part takes {more} more and saves {n} belt change, but not time.","other":"Slower is allowed: with {steps} at {position} ({rpm} rpm) as well, cutting one part takes {more} more and saves {n} belt changes, but not time."},
  "plan.column part": "part",
  "plan.measured parts": "Measured",
  "plan.measured parts, more": "Measured, parts 1 to {last}; the others on another sheet",
  "plan.drawing holes": {"one":"{n} hole","other":"{n} holes"},
  "plan.drawing named holes": {"one":"Hole “{name}”","other":"{n} holes “{name}”"},
  "plan.drawing over": "over {from} to {to}",
  "plan.drawing through": "through",
  "plan.drawing deep": "{depth} deep",
  "plan.drawing from to": "from {from} to {to}",
  "plan.drawing wide": "{size}, {width} wide",
  "plan.drawing at": "at {at}",
  "plan.drawing taper": "ø{large} to ø{small}",
  "plan.drawing knurl": "knurl {pitch}",
  "plan.drawing centre": "centre ø{pilot}",
  "plan.drawing more": "and {count} more: see the steps",
  "plan.drawing face": "faced",
  "plan.drawing face to": "faced to {length} long",
  "plan.drawing parted": "parted off at {length}",
  "plan.drawing at the other end": "at the other end",
  "plan.drawing from end to end": "{length} long in all",
  "plan.drawing from first": "{length} from the free end",
  "plan.drawing from other": "{length} from the other end",
  "plan.drawing scale": "scale {ratio}",
  "plan.drawing scale mm": "scale {ratio}, all sizes in mm",
  "plan.drawing scale in": "scale {ratio}, all sizes in inches",
  "plan.belt back": "From the second part on first move the belt back to {position}, {off}: the part before ended at {last}.",
  "plan findings.do not file": "do not file or polish {material}; ask for a wider tolerance, or another machine",
  "plan findings.finish by hand": "finish by hand",
  "plan findings.usually bears": "what a {firmness} one usually bears, common practice",
  "plan findings.light": "light",
  "plan findings.firm": "firm",
  "plan findings.no stop behind": "a bar that is parted off gets shorter with every part and does not reach a stop in the spindle: it is left out of account",
  "plan findings.no stop behind remedy": "draw the bar out to a stop that its end meets, or saw blanks and give their length",
  "plan findings.no blanks": "works by operation on a bar that goes through the spindle: the second part is not there before the first is parted off",
  "plan findings.no blanks remedy": "saw blanks and give their length, or make one part after the other",
  "plan findings.loose": "comes after parting off: nothing holds the part",
  "plan findings.loose remedy": "turn it round and hold it again before this step, or part it off last",
  "plan findings.turned, length unknown": "turns round a bar whose length is not known",
  "plan findings.turned, length unknown remedy": "part it off first, or give the blank's length",
  "plan findings.nothing in the jaws": "leaves {out} out of work that is only {long} long: nothing is in the jaws",
  "plan findings.less out": "let less stand out",
  "plan findings.jaws on a step": "the jaws would close on {diameter} for {length} alone, with {thicker} behind it: they do not hold it, or do not go over it",
  "plan findings.more out or other end": "let more stand out, or hold the other end",
  "plan findings.sound grip": "let {out} stand out, where the jaws close on {diameter} for {length}; or hold the other end",
  "plan findings.jaws before a step": "the jaws close on {diameter} for {length}, and {thicker} follows behind it",
  "plan findings.jaws clear inside": "see that their inner ends stay clear of the thicker part",
  "plan findings.jaws hold too little": "the jaws hold only {length} of {diameter} diameter: it flies out at the first cut",
  "plan findings.less out or other end": "let less stand out, or hold the other end",
  "plan findings.long lever": "the jaws hold {length}, and {out} stands out of them",
  "plan findings.jaws on a cone": "the jaws hold a cone at {diameter}, and touch it along one edge alone",
  "plan findings.little grip": "the jaws hold only {length} of {diameter} diameter; {least} is the least",
  "plan findings.little grip remedy": "let less stand out, support its end, or take light cuts",
  "plan findings.thin under jaws": "the jaws press on a wall of {wall} round the bore of {bore}: it springs, and the bore comes out of round",
  "plan findings.thin under jaws remedy": "tighten lightly, plug the bore, or finish the bore after this",
  "plan findings.jaws on thread": "the jaws would lie on the thread {thread}",
  "plan findings.jaws on knurl": "the jaws would lie on the knurl",
  "plan findings.jaws on surface remedy": "hold it elsewhere, or in a split sleeve",
  "plan findings.into the jaws": "reaches {to} along the work, and the jaws begin at {at}: the tool runs into them",
  "plan findings.near the jaws": "reaches {to} along the work, and the jaws begin at {at}: less than {clear} clear",
  "plan findings.into the driver": "reaches {to} along the work, and the driver begins at {at}: the tool runs into it",
  "plan findings.near the driver": "reaches {to} along the work, and the driver begins at {at}: less than {clear} clear",
  "plan findings.into the jaws remedy": "let {more} more stand out, or shorten the step",
  "plan findings.before the centre": "do it before the centre is brought up",
  "plan findings.centre in the way": "needs the free end, where the centre is",
  "plan findings.parts at a centre": "parts off work that is held by a centre: it closes on the blade",
  "plan findings.parts at a centre remedy": "hold it in the chuck alone for this",
  "plan findings.into the centre": "turns the end to {size}, and the centre hole is {hole} wide: the tool meets the centre",
  "plan findings.into the centre remedy": "take a smaller centre drill, or turn the end last without the centre",
  "plan findings.near the centre": "turns the end to {size} beside a centre hole of {hole}: hardly room for the tool",
  "plan findings.near the centre remedy": "use a cut-away centre and a slender knife tool, or a smaller centre drill",
  "plan findings.no centre seat": "is held by a centre in a straight bore: it bears on an edge, if it is wide enough at all",
  "plan findings.no centre seat remedy": "plug the bore, or bring the centre up before it is made",
  "plan findings.no centre hole, other": "is held by a centre, and no step makes the centre hole in its other end",
  "plan findings.no centre hole, free": "is held by a centre, and no step makes the centre hole in its free end",
  "plan findings.no centre holes": "is held by a centre, and no step makes the centre hole in either end",
  "plan findings.no centre hole remedy": "centre drill it while the chuck alone holds it, or see that the bar has a centre hole",
  "plan findings.set over, chuck": "sets the tailstock over, and the chuck alone holds the work: nothing slants",
  "plan findings.set over, chuck and centre": "sets the tailstock over, and the chuck holds the other end straight: the work bends",
  "plan findings.set over remedy": "hold it between centres first, or swing the top slide instead",
  "plan findings.headstock swung away": "swings the headstock away from the centre that holds the work",
  "plan findings.headstock swung away remedy": "hold it in the chuck alone, or swing the top slide instead",
  "plan findings.thick": "{least} to {most}",
  "plan findings.whips": "more than {times} times whips, and climbs over the tool",
  "plan findings.chatters": "more than {times} times bends and chatters",
  "plan findings.slender, steady": "{why}: it needs a steady, or a thicker part",
  "plan findings.slender, turn short": "{why}: let it out less, hold its end with a centre, or turn the thin end first and short",
  "plan findings.slender, draw out": "{why}: let it out less, and draw it out to a centre afterwards",
  "plan findings.parts far out": "parts off {distance} from the jaws, where the work gives and pinches the blade",
  "plan findings.parts far out remedy": "let less stand out: close to the jaws is best",
  "plan findings.beyond travel": "needs {travel} of the {wheel}, which travels {has}",
  "plan findings.beyond travel remedy, barrel": "draw it back half way, bring the tailstock or the table up by as much, and go on counting from that reading",
  "plan findings.beyond travel remedy": "make it shorter or shallower, or do it in two settings",
  "plan findings.no wheel": "no handwheel with a feed sets this depth: dial readings cannot be given",
  "plan findings.no wheel remedy, readings": "put its readings right, or take them again",
  "plan findings.no wheel remedy": "measure that wheel's feed, or say in the machine's file which wheel goes across",
  "plan findings.no wheel remedy, face": "measure the feed of the wheel that goes along, or say in the machine's file which one it is",
  "plan findings.too many cuts": "would take more than {most} cuts of {cut}",
  "plan findings.too many cuts remedy": "take deeper cuts, or begin from stock nearer to size",
  "plan findings.finer than the dial": "a tolerance of {tolerance} from end to end is finer than the dial alone gives, about {gives}",
  "plan findings.finer than at once": "gone to at once, touch and feed alone leave ± {doubt}, what reading the wheel adds is not known, and the tolerance leaves ± {margin}",
  "plan findings.finer than the dial remedy": "go in by halves of what is left, and measure between",
  "plan findings.finer than the slide": "a tolerance of {tolerance} from end to end is finer than this slide comes back to one reading, about {holds} (its scatter as measured, and a dial read to a tenth; wear not counted)",
  "plan findings.finer than the reading": "measured once before the last cut it comes out to ± {doubt}, and its tolerance leaves ± {margin}",
  "plan findings.finer than the reading, feed unknown": "gauge and dial alone leave ± {doubt}, the feed's own ± is not known, and the tolerance leaves ± {margin}",
  "plan findings.finer than the reading, old dial": "gauge and slide alone leave ± {doubt}, what reading the old dial adds is not known, and the tolerance leaves ± {margin}",
  "plan findings.finer than the reading, no dial": "there is no dial to go by; gauge and slide alone leave ± {doubt}, and the tolerance leaves ± {margin}",
  "plan findings.finer than the reading, worn and no dial": "the slide is worn and there is no dial to go by; gauge and slide alone leave ± {doubt}, and the tolerance leaves ± {margin}",
  "plan findings.measure and correct": "measure and correct: leave {doubt} on the diameter, measure again, and take off what is left",
  "plan findings.beyond the drill limit": "{diameter} is larger than the machine drives, {limit} at most",
  "plan findings.beyond the drill limit remedy": "do not run it; bore it, or take it to another machine",
  "plan findings.knurl presses": "a plain knurling tool presses harder than a light machine's slides and bearings bear",
  "plan findings.knurl presses remedy": "use one that pinches the work between two wheels, or call the machine firm in its file where it was tried",
  "plan findings.headstock does not swivel": "swings the headstock, and the machine's file knows of none that swivels",
  "plan findings.headstock does not swivel remedy": "swing the top slide instead; or, where the headstock does swivel, give its scale in the machine's file",
  "plan findings.wide blade": "a blade of {blade} is wide for this machine (about {most} at most, common practice): it chatters and digs in",
  "plan findings.wide blade remedy": "take a narrower one, and cut a wide groove in several plunges",
  "plan findings.no drive": "the machine's file has no drive: every speed is yours to choose",
  "plan findings.no drive remedy": "begin at the slowest",
  "plan findings.no speed": "no cutting speed is known for {material} with {tool}",
  "plan findings.no speed remedy": "give one of your own in the machine's file",
  "plan findings.fast": "even the slowest position, {rpm} rpm, is faster than a light machine should run {diameter}, though not faster than is published",
  "plan findings.fast remedy": "sharp tool, light cuts, plenty of cutting fluid; stop if it chatters or the tool's edge turns blue",
  "plan findings.too fine": "at every position the hand would feed {material} too finely, and fine chips burn",
  "plan findings.do not run": "do not run it",
  "plan findings.too fast": "even the slowest position, {slowest} rpm, is too fast: {diameter} wants no more than {most} rpm",
  "plan findings.too fast to knurl": "even the slowest position, {slowest} rpm, is too fast: knurling wants no more than {most} rpm",
  "plan findings.too fast for it": "even the slowest position, {slowest} rpm, is too fast: it wants no more than {most} rpm",
  "plan findings.beyond limit": "every position that is slow enough for {diameter} ({most} rpm) may run beyond {held} of {limit} rpm",
  "plan findings.chuck limit": "the chuck's limit",
  "plan findings.spindle limit": "the spindle's limit",
  "plan findings.too fast to part remedy": "do not run it: saw it off with the machine stopped, turn it round and face it",
  "plan findings.too fast to knurl remedy": "turn the spindle by hand, or give a speed of your own in the machine's file where it was tried",
  "plan findings.too fast to chamfer remedy": "break the edge with a file, work stopped, or take a smaller diameter",
  "plan findings.too fast remedy": "do not run it: a smaller diameter, a slower drive, or another machine",
  "plan findings.cuts air, face": "cuts nothing: no metal stands before that face",
  "plan findings.cuts air, hole": "cuts nothing: the hole there is {size} already",
  "plan findings.cuts air": "cuts nothing: the work is {size} there already",
  "plan findings.cuts air remedy": "mind the order of steps, where it begins, and its sizes",
  "plan findings.thicker than said": "begins at {said}, but the work is still {there} there: a first cut would be too deep",
  "plan findings.leave from out": "begin from what stands there, or mind the order of steps",
  "plan findings.thinner than said": "begins at {said}, but the work is only {there} there",
  "plan findings.thinner than said remedy": "the cuts are planned from what stands there",
  "plan findings.beyond the stock": "needs {large} where it is large, and the work is {there} there",
  "plan findings.no stock": "needs {large} where it is large, and no work is there",
  "plan findings.beyond the stock remedy": "shorten it, or begin it where the metal is",
  "plan findings.no metal": "there is no metal at {at}",
  "plan findings.no metal remedy": "lengths count from the free end's finished face",
  "plan findings.wider than the knurl": "a wheel {wheel} wide marks more than {length}",
  "plan findings.wider than the knurl remedy": "take a narrower wheel, or make the knurl as wide as it",
  "plan findings.knurls unevenly": "runs over more than one diameter",
  "plan findings.knurls unevenly remedy": "knurl one cylinder",
  "plan findings.other diameter": "gives {said} at the blade, and the work is {there} there",
  "plan findings.other diameter remedy": "the plan goes by what stands there",
  "plan findings.face, length unknown": "faces to a length, and the bar's length is not given",
  "plan findings.face, length unknown remedy": "say how much comes off instead, or give the blank's length",
  "plan findings.behind a collar": "begins at {at} behind {collar}: the tool has to plunge in there, which a knife tool does not",
  "plan findings.behind a collar remedy": "cut a groove there first, or use a pointed tool in light cuts",
  "plan findings.through the back": "comes out at the back: its point goes to {to}, and the work is {long} long",
  "plan findings.through the back, stop": "keep the stop in the spindle clear of the drill, or make it hollow",
  "plan findings.through the back remedy": "see that nothing stands behind it, and ease the feed at the end",
  "plan findings.hole is": "the hole is {hole}",
  "plan findings.none made": "none was made",
  "plan findings.drill wider than work": "drills {size} into work of {work}",
  "plan findings.drill wider than work remedy": "take a smaller drill, or drill it before the outside is turned",
  "plan findings.no start": "begins on a plain face, where a drill wanders",
  "plan findings.no start remedy": "centre drill it first",
  "plan findings.bore wider than work": "bores {size} into work of {work}",
  "plan findings.bore wider than work remedy": "bore less, or before the outside is turned",
  "plan findings.bore without hole": "bores where no hole was made",
  "plan findings.bore deeper than hole": "bores {depth} deep, and the hole is not so deep",
  "plan findings.bore without hole remedy": "drill first, to the full depth and a little more",
  "plan findings.narrower than said": "begins in a hole of {said}, and it is {there}",
  "plan findings.slender boring tool": "bores {depth} deep in a hole of {hole}: a boring tool so long springs",
  "plan findings.slender boring tool remedy": "take light cuts and measure often, or drill and ream",
  "plan findings.ream, hole": "wants a hole a little under {size}; {found}",
  "plan findings.ream, hole for its depth": "wants a hole a little under {size} for its whole depth; {found}",
  "plan findings.not so deep": "it is not so deep",
  "plan findings.ream, hole remedy": "drill first, a little smaller and deeper",
  "plan findings.ream, short below": "leaves {room} of hole below the reamed depth, where the reamer's lead ends",
  "plan findings.ream, short below remedy": "drill {more} deeper, or ream less",
  "plan findings.much to ream": "takes {off} off a hole of {hole}, more than a reamer bears (about {most})",
  "plan findings.much to ream remedy": "drill or bore it to {size} or a little more",
  "plan findings.no edge of hole": "breaks the edge of a hole that was not made",
  "plan findings.no edge of hole remedy": "drill first, or mind where the edge lies",
  "plan findings.no edge": "there is no edge at {at}",
  "plan findings.no edge remedy": "where the edge lies counts from the free end; 0 is the end itself",
  "plan findings.larger than the edge": "takes {size} off an edge that stands only {height} high",
  "plan findings.larger than the edge remedy": "make it {height} or less",
  "plan findings.slender blade": "goes {deep} deep with a blade {blade} wide, more than {times} times its width: it wanders and breaks",
  "plan findings.slender blade remedy": "take a blade of {blade} or wider, or turn the place down first",
  "plan findings.too deep": "cuts {cut} deep; this machine bears {most} ({why})",
  "plan findings.too deep remedy": "cut {most} deep or less, or allow more in the machine's file where it was tried",
  "plan findings.rubs": "leaves {finish} for the last cut: the tool rubs instead of cutting",
  "plan findings.rubs remedy": "leave {least} or more for it",
  "plan findings.through the wall": "breaks through the wall at {at} along the work",
  "plan findings.thin wall": "leaves a wall of {wall} at {at} along the work",
  "plan findings.thin wall refused": "mind both diameters: less than {least} does not stand the cut",
  "plan findings.thin wall remedy": "take light cuts last, and mind that jaws press it out of round",
  "plan findings.tap deeper than hole": "taps {depth} deep, and the hole is not so deep",
  "plan findings.the thread": "the thread {name}",
  "plan findings.the knurl": "the knurl",
  "plan findings.spoils": "takes {made} away, which an earlier step made",
  "plan findings.spoils remedy": "make this cut before {made}, or make it smaller or shorter",
  "plan findings.tap, no hole": "wants a hole from {least} (full thread) to less than {most}; none was made",
  "plan findings.tap, no hole remedy": "drill first, to the tapping size and deeper than the thread",
  "plan findings.tap, wrong hole": "wants a hole from {least} (full thread) to less than {most}; the last one is {hole}",
  "plan findings.tap, wrong hole remedy": "drill {hole} or near it: the threads sheet has the drill",
  "plan findings.tap, hole for share": "drill {hole} or near it, for {share} %",
  "plan findings.tight hole": "the hole of {hole} gives {share} % of full thread: a tap turned by hand may break in it",
  "plan findings.more holes": {"one":"is done in {count} holes, and so far there is {n}","other":"is done in {count} holes, and so far there are {n}"},
  "plan findings.more holes remedy": "begin the others first, or count again",
  "plan findings.loose hole": "the hole of {hole} gives {share} % of full thread: it strips easily",
  "plan findings.thread as wide as work": "the thread is as wide as the work there, {size}",
  "plan findings.thin wall round thread": "leaves {wall} of wall round the thread: it splits",
  "plan findings.thin wall round thread remedy": "take a smaller thread, or tap it before the outside is turned down",
  "plan findings.tap on the floor": "leaves {room} of hole below {depth} of thread: the tap's lead alone needs {lead}, and it breaks on the floor",
  "plan findings.tap on the floor remedy": "drill {depth} deep at full diameter, or tap less deep",
  "plan findings.tap, short below": "leaves {room} of hole below {depth} of thread; {source} asks {asks}",
  "plan findings.tap, short below remedy": "drill {depth} deep at full diameter, or finish with a bottoming tap and count its turns",
  "plan findings.wrong rod": "wants a rod of about {rod} for {length}; the work is {work}",
  "plan findings.wrong rod remedy": "turn it to {rod} first",
  "plan findings.thin wall under thread": "leaves {wall} of wall between the thread's root and the bore of {bore}: it collapses",
  "plan findings.thin wall under thread remedy": "cut the thread before the hole is made, or take a smaller hole",
  "plan findings.die before shoulder remedy": "end it {before} before the shoulder, or cut a groove {width} wide to {floor} there, by {source}",
  "plan findings.die on the shoulder": "ends {room} before a shoulder: the die's lead leaves about {lead} unfinished, so it runs against the shoulder",
  "plan findings.short run-out": "ends {room} before a shoulder",
  "plan findings.short run-out remedy": "{remedy}; or turn the die over for the last turns",
  "plan findings.slender in chuck": "{length} stands out at {diameter} diameter, {ratio} times as long as thick, with nothing at its free end",
  "plan findings.slender between": "{length} is free between what holds it, at {diameter} diameter, {ratio} times as long as thick",
  "plan findings.slender shape in chuck": "{length} stands out at {diameter} diameter, as stiff as a bar {ratio} times as long as thick, with nothing at its free end",
  "plan findings.slender shape between": "{length} is free between what holds it, at {diameter} diameter, as stiff as a bar {ratio} times as long as thick",
  "student.dial not proved": "Nobody has proved this dial. Ask before you trust it.",
  "student.slide not even": "This does not move evenly: it can be out by {most}. Measure the part.",
  "student.slide out over": "The dial can be out by {most} over {travel}. Measure the part.",
  "student.never key in chuck": "Never leave the key in the chuck.",
  "student.never gloves": "Never wear gloves, rings or loose sleeves.",
  "student.never long hair": "Never let long hair hang. Tie it back.",
  "student.never without eye cover": "Never work without safety glasses.",
  "student.never touch chips": "Never touch chips. They cut and burn. Use a brush.",
  "student.never measure turning": "Never measure while it turns.",
  "student.never move belt motor": "Never move the belt while the plug is in.",
  "student.never move belt treadle": "Never move the belt with a foot on the treadle.",
  "student.never move belt hand": "Never move the belt with a hand on the crank.",
  "student.never too fast": "Never go faster than the chuck allows.",
  "student.never breathe iron": "Never breathe cast iron dust. Wipe it up, do not blow.",
  "student.never long bar": "Never let a long bar stick out. It bends and whips.",
  "student.never hold work": "Never hold the work in your hand. Clamp it.",
  "student.belt switch off": "Switch off. Wait until it stops.",
  "student.belt off motor": "Pull the plug.",
  "student.belt off treadle": "Take your foot off the treadle. Wait until it stops.",
  "student.belt off hand": "Take your hand off the crank. Wait until it stops.",
  "student.belt open cover": "Open the cover.",
  "student.belt put": "Put the belt on the step you need.",
  "student.belt turn by hand": "Turn the chuck once by hand. Take the key out.",
  "student.belt close motor": "Close the cover. Then put the plug in.",
  "student.belt close treadle": "Close the cover. Then put your foot back.",
  "student.belt close hand": "Close the cover. Then take the crank again.",
  "student.lost loose turning": "Screws and gears fit loosely.",
  "student.lost loose drilling": "The parts that move the drill fit loosely.",
  "student.lost waits turning": "When you turn back, the slide waits.",
  "student.lost waits drilling": "When you turn back, the drill waits.",
  "student.lost is": "That wait is lost motion.",
  "student.lost one side": "Always come to a line from the same side.",
  "student.lost too far half": "Too far? Go back half a turn. Come on again.",
  "student.lost too far little": "Too far? Go back a little more than the lost motion. Come on again.",
  "student.ask before": "Ask before you start. Ask when a sound is new. Ask when you are not sure.",
  "student.ask teacher": "Your teacher, the maker's book and the rules of this shop come before this sheet.",
  "student.how much thinner": "How much thinner does the part get?",
  "student.how far": "How far does it move?",
  "student.turn half": "Turn the {wheel} half a turn. {moved}",
  "student.turn whole": {"one":"Turn the {wheel} {n} whole turn. {moved}","other":"Turn the {wheel} {n} whole turns. {moved}"},
  "student.turn to arrow mm": "You start at 0 and turn to the arrow. What is that in mm?",
  "student.turn to arrow in": "You start at 0 and turn to the arrow. What is that in inches?",
  "student.turn to arrow mm, diameter": "You start at 0 and turn to the arrow. What is that in mm on diameter?",
  "student.turn to arrow in, diameter": "You start at 0 and turn to the arrow. What is that in inches on diameter?",
  "student.lines make": {"one":"{n} line: {distance}","other":"{n} lines: {distance}"},
  "student.on the dial": "You want {distance} on the dial. How many turns? Then what does the dial say?",
  "student.on the dial, which row": "You want {distance} on the dial. How many turns? Then what does the dial say, and on which row?",
  "student.lines more": "The part measures {measured}. You want {wanted}. How many lines more?",
  "student.lines more, both sides": "The part measures {measured}. You want {wanted}. How many lines more? Think: both sides get thinner.",
  "student.lines": {"one":"{n} line","other":"{n} lines"},
  "student.went too far": "You went {lines} lines too far. What do you do?",
  "student.went back half": "Back half a turn, then come on again to the right line.",
  "student.went back little": "Back a little more than the lost motion, then come on again to the right line.",
  "student.dial says": "the dial says {figure}",
  "student.row says": "row {row} says {figure}",
  "student.no whole turn": "No whole turn: {says}",
  "student.turns, then": {"one":"{n} turn, then {says}","other":"{n} turns, then {says}"},
  "student.nearest line": "{turned}; the nearest line is {line}",
  "student.as the dial stands at 0": "You touch, and the dial stands at 0. {question}",
  "student.step long": "A step is {length} long. How do you turn the {wheel}?",
  "student.drill grabs": "The drill grabs and the part spins. What was forgotten? What do you do?",
  "student.clamp forgotten": "The clamp. Switch off. Never reach for the part.",
  "student.turns": {"one":"{n} turn","other":"{n} turns"},
  "student.eighths": {"one":"{n} eighth","other":"{n} eighths"},
  "student.turns and eighths": "{turns} and {eighths}",
  "student.too deep": "{turned}: {left} too deep",
  "student.too little": "{turned}: {left} too little",
  "student.hole deep": "A hole is to be {depth} deep. How do you turn the {wheel}?",
  "student.hole deep, eighths": "A hole is to be {depth} deep. How far do you turn the {wheel}, in eighths of a turn?",
  "student.speed drilling": "You drill {material}. The drill is {size}. Where does the belt go?",
  "student.speed turning": "You turn {material}, {size} thick. Where does the belt go?",
  "student.position and speed": "{position}, {rpm} rpm",
  "student.nowhere, unknown": "Nowhere: no speed is known. Ask.",
  "student.nowhere, too fast": "Nowhere: too fast. Ask.",
  "student.thread by the inch": "Cut a {thread} thread {depth} deep, by hand. It has {perInch} turns to the inch. How many turns?",
  "student.thread": "Cut an {thread} thread {depth} mm deep, by hand. One turn goes {pitch} mm in. How many turns?",
  "student.panel never": "5  Never",
  "student.panel ask": "6  Ask",
  "student.panel dial": "1  Read the dial",
  "student.panel one side": "2  Come on from one side",
  "student.panel belt": "3  Change the belt",
  "student.panel speed": "4  Choose a speed",
  "student.I ask": "I ask:",
  "student.name": "Name:",
  "student.ask how far": "Ask how far one turn goes.",
  "student.try it": "Try it",
  "student.work these out": "Work these out. Write the answer on the line. These are numbers of this machine.",
  "student.dial shows thinner": "The dial shows how much thinner the part gets.",
  "student.touch and count": "Touch the part. Set the dial to 0. Then count.",
  "student.touch and count on": "Touch the part. Note what the dial reads. Count on from it.",
  "student.plug out first": "plug out first",
  "student.no speeds": "This sheet knows no speeds. Ask before you start.",
  "student.find the belt": "Find the place of the belt:",
  "student.answers": "Answers",
  "student.one turn": "One turn of the {wheel} is {distance}.",
  "student.one turn on the dial": "One turn of the {wheel} is {distance} on the dial.",
  "student.no dial": "The {wheel} has no dial. Count the turns.",
  "student.one line": "From line to line: {division}.",
  "student.dial shows travel": "The dial shows how far the slide moves.",
  "student.dial shows depth": "The dial shows how deep the drill goes.",
  "student.dial shows travel across": "The dial shows how far the slide moves. A round part gets thinner by twice that.",
  "student.rows": "It has {rows} rows. Use the next row after each turn.",
  "student.loses": "Here the {wheel} loses about {much}.",
  "student.loses, lines": {"one":"Here the {wheel} loses about {much} on the dial: {n} line.","other":"Here the {wheel} loses about {much} on the dial: {n} lines."},
  "student.slowest": "slowest: {position}",
  "student.ask": "ask",
  "student.material": "material",
  "student.how big drilling": "How big is the drill? What is the part made of?",
  "student.how big turning": "How thick is the part? What is it made of?",
  "student.no speed known": "No speed is known. Ask.",
  "student.take the slower": "Not sure? Take the slower one.",
  "student.wheel too far": "too far",
  "student.wheel back half": "back half a turn",
  "student.wheel back little": "back a little",
  "student.wheel on again": "on again: right",
  "student.count lines": "count the lines from 0; {counted}",
  "student.numbers in mm": "numbers in mm",
  "student.numbers in in": "numbers in inches",
  "student.lines are": {"one":"{n} line = {value}","other":"{n} lines = {value}"},
  "student.step long, eighths": "A step is {length} long. How far do you turn the {wheel}, in eighths of a turn?",
  "student.too far": "{turned}: {left} too far",
  "student.panel turns": "1  Count the turns",
  "student.one turn, thinner": "One turn of the {wheel} makes the part {distance} thinner.",
  "student.old dial": "Do not go by the old dial of the {wheel} alone. Count the turns, or read it only to a figure that a plan or a stops sheet gives for it.",
  "student.lost one side, no dial": "Always come on from the same side.",
  "measuring form.out": "out",
  "measuring form.return": "return",
  "measuring form.slide": "slide",
  "measuring form.quill": "quill",
  "measuring form.quill goes": "down",
  "measuring form.gauge stands": "stands still",
  "measuring form.lost motion": "lost motion",
  "measuring form.step plug": "{off}. Adjust and oil the slide as it is to be used; lock the others.",
  "measuring form.step plug quill": "{off}. Clamp table and column; adjust and oil the quill as it is to be used.",
  "measuring form.step take up": "Take up the lost motion: from the very end of the travel, move the slide {enough} or more, one way.",
  "measuring form.step take up quill": "Take up the lost motion: from its very top, move the quill {enough} or more down.",
  "measuring form.step zero": "Dial on its mark, gauge on 0; scribe a line across slide and ways. Gauge short of {travel}: move it on with blocks.",
  "measuring form.step zero quill": "Wheel on its mark, gauge on 0; scribe a line on the quill where it leaves the head. Gauge short of {travel}: move it on with blocks.",
  "measuring form.rim": "No dial yet? Lay a strip of paper once round the rim, cut it where it meets, fold it in {parts} and stick it on: its creases are the marks.",
  "measuring form.step out": "Go one way only: at each mark write down the gauge. Gone too far? Back a whole turn, and come up again.",
  "measuring form.step out parts": "Go one way only: at each mark write down the gauge. Gone too far? Back by {enough} or more, and come up again.",
  "measuring form.step end": "After the last mark run past the end by {enough} or more.",
  "measuring form.step return": "Come back: write at the same marks, from the bottom row up.",
  "measuring form.step again": "Run past zero, then again as run 2: it shows whether the readings repeat.",
  "measuring form.handwheel": "Handwheel:",
  "measuring form.one turn": "One turn {turn}.",
  "measuring form.made for": "Travel {travel}, gauge {gauge}.",
  "measuring form.assumed": "{length} (assumed)",
  "measuring form.put right": "Put right in the file what is assumed, and print again.",
  "measuring form.nothing held": "The file holds no feed for it yet.",
  "measuring form.held stated": "In the file, as given: {turn} per turn.",
  "measuring form.held screw": "In the file, by its screw: {turn} per turn.",
  "measuring form.held rack": "In the file, by rack and pinion: {turn} per turn.",
  "measuring form.held readings": {"one":"In the file, from {n} reading: {turn} per turn.","other":"In the file, from {n} readings: {turn} per turn."},
  "measuring form.held readings of": {"one":"In the file, from {n} reading of {day}: {turn} per turn.","other":"In the file, from {n} readings of {day}: {turn} per turn."},
  "measuring form.held lost": "Lost motion {lost}.",
  "measuring form.date": "Date",
  "measuring form.by": "Measured by",
  "measuring form.temperature": "Room",
  "measuring form.gauge": "Gauge",
  "measuring form.graduation": "reads to",
  "measuring form.error limit": "its error limit",
  "measuring form.line": "line on the ways",
  "measuring form.line on quill": "line on the quill",
  "measuring form.turns": "turns",
  "measuring form.about": "about",
  "measuring form.run": "run {run}",
  "measuring form.dial": "The dial",
  "measuring form.drum across": "drum across",
  "measuring form.width": "width",
  "measuring form.outside": "outside",
  "measuring form.inside": "inside",
  "measuring form.bevel large": "large end",
  "measuring form.bevel small": "small end",
  "measuring form.which dial": "Which way do the numbers grow? Look from the handle, and tick:",
  "measuring form.dial in file": "In the file: {sizes}.",
  "measuring form.in file": "in file",
  "measuring form.into the file": "Into the file, as it stands here; for “…” write what you measured:",
  "measuring form.places": {"one":"Why so many: {places} places, one every turn, {runs} runs.","other":"Why so many: {places} places, one every {n} turns, {runs} runs."},
  "measuring form.enough": "{over} then come out to ± {doubt}, 95 times in 100 (wanted: ± {within}).",
  "measuring form.not enough": "Even so {over} come out only to ± {doubt}, 95 times in 100 (wanted: ± {within}): that takes a finer gauge.",
  "measuring form.worn": "Even so {over} come out only to ± {doubt}, 95 times in 100 (wanted: ± {within}): that is wear, which no finer gauge and no more readings take away. New readings show where it lies.",
  "measuring form.wear shown": "A worn stretch that puts a length out by {depth} shows 80 times in 100.",
  "measuring form.no wear shown": "So few places never show a worn stretch.",
  "measuring form.why scatter known": "One reading scatters as those in the file do.",
  "measuring form.why scatter assumed": "One reading is taken to scatter by half a graduation.",
  "measuring form.why whole turns": "Whole turns bring the same mark to the index each time, so an eccentric dial cannot mislead.",
  "measuring form.why parts of a turn": "One turn goes so far that parts of a turn are read.",
  "measuring form.why ends free": "The ends of the travel are kept free to take up the lost motion in.",
  "measuring form.why short gauge": "The gauge does not reach over the whole travel: what lies beyond it stays unmeasured.",
  "measuring form.why more runs": "More runs only show how well the readings repeat.",
  "measuring form.drive": "Pulleys, centres and speeds",
  "measuring form.motor held": "Motor in the file: {rpm} rpm.",
  "measuring form.belt held": "Belt in the file: {belt}.",
  "measuring form.belt round": "round",
  "measuring form.belt vee": "vee",
  "measuring form.belt flat": "flat",
  "measuring form.belt toothed": "toothed",
  "measuring form.chuck held": "Chuck in the file: {rpm} rpm.",
  "measuring form.tachometer": "Tachometer",
  "measuring form.chuck mark": "Mark on the chuck",
  "measuring form.motor plate": "Motor, from its plate",
  "measuring form.mains": "mains",
  "measuring form.belt": "Belt: round, flat, vee or toothed, and its size",
  "measuring form.rpm": "rpm",
  "measuring form.drive plug": "{off} before a hand goes near a belt or pulley.",
  "measuring form.drive pulleys": "Measure each pulley in one of the four ways, and write down which: under a round belt over the belt, a toothed one by its teeth.",
  "measuring form.drive centres": "From shaft to shaft, with the belt as tight as it runs.",
  "measuring form.drive speeds": "Close the covers. Nothing in the chuck but what it holds fast. Let the belt warm up, hold the tachometer to the mark at arm’s length, touch nothing that turns; read each position twice, without load.",
  "measuring form.driver": "driver",
  "measuring form.driven": "driven",
  "measuring form.measured": "measured",
  "measuring form.stage": "stage",
  "measuring form.centres": "centres",
  "measuring form.step": "step",
  "measuring form.position": "position",
  "measuring form.by ratio": "by ratio",
  "measuring form.again": "again",
  "measuring form.direct": "direct",
  "measuring form.motor": "motor",
  "measuring form.teeth": {"one":"{n} tooth","other":"{n} teeth"},
  "measuring form.why parts of turns": "one turn goes so far that parts of a turn must be read",
  "measuring form.why gauge short": "the gauge does not reach over the whole travel: what lies beyond it stays unmeasured",
  "measuring form.why further runs": "further runs over the same places show how well the slide repeats, not the feed",
  "measured report.a turn": "{name}: {turn} per turn",
  "measured report.jumps": "{name}: readings that jump",
  "measured report.miscounted": "{name}: a turn miscounted",
  "measured report.readings": "readings",
  "measured report.scatter": {"one":"{n} reading. It lies about {scatter} off the line.","other":"{n} readings. Each lies about {scatter} off the line."},
  "measured report.scatter of runs": {"one":"{n} reading in {runs} runs at {places} places. Within a run each lies about {scatter} off the line.","other":"{n} readings in {runs} runs at {places} places. Within a run each lies about {scatter} off the line."},
  "measured report.half width": "± holds 95 times in 100; readings to spare: {degrees}.",
  "measured report.half width of runs": "± holds 95 times in 100; places to spare: {degrees}.",
  "measured report.with wave": "Line and once-per-turn wave were fitted together.",
  "measured report.lost motion": "lost motion",
  "measured report.lost": "{lost}, {turn} of a turn",
  "measured report.lost elsewhere": "That is the most, from turn {from} to {to}; elsewhere it comes down to {least}.",
  "measured report.back doubtful": "Doubtful readings on the way back stand in it: take them again.",
  "measured report.back contradicts": "Not known: the way back contradicts the way out by {off}, {turn} of a turn.",
  "measured report.back take again": "Not known: readings on the way back are doubtful; take them again.",
  "measured report.no back": "Not measured: no readings on the way back.",
  "measured report.maker meant": "the maker meant",
  "measured report.on diameter": "{length} on diameter",
  "measured report.nominal": "{nominal} per turn: a dial made for that is out by {out} per turn.",
  "measured report.nominal over": "{nominal} per turn: a dial made for that is out by {out} per turn, {over} over {travel}.",
  "measured report.far from nominal": "Screws are rarely so far out: one of the two looks like a slip; measure again.",
  "measured report.along": "along the travel",
  "measured report.too few": "Too few readings to tell whether the travel is worn.",
  "measured report.no bend": "No bend that is more than chance.",
  "measured report.curved": "Curved: a worn or stretched screw; measure by zones, with more readings.",
  "measured report.pattern by": "Neighbours stray the same way: Durbin and Watson, 1951.",
  "measured report.uneven": "Uneven: {least}, {most}.",
  "measured report.zone": "{turn} from turn {from} to {to}",
  "measured report.chance": "Readings of an even feed look like this {percent} times in 100.",
  "measured report.chance below": "Readings of an even feed look like this less than once in 1000 times.",
  "measured report.within": "within the turn",
  "measured report.whole turns only": "Not measured: no readings within the turn.",
  "measured report.too few within": "Not known: that takes more readings within a turn, over several turns.",
  "measured report.no wave": "No once-per-turn error that is more than chance.",
  "measured report.wave": "It leads and lags by {sway}, furthest ahead at {crest} of a turn.",
  "measured report.again": "the same place again",
  "measured report.one run": "Not measured: one run.",
  "measured report.repeats": "It repeats with a standard deviation of {deviation} (repeats to spare: {degrees}).",
  "measured report.iso 230": "By the formulas of ISO 230-2, {runs} runs: accuracy both ways {accuracy}, repeatability {repeatability}, reversal value {reversal}.",
  "measured report.iso 230 few": "By the formulas of ISO 230-2, {runs} runs where the standard asks for 5: accuracy both ways {accuracy}, repeatability {repeatability}, reversal value {reversal}.",
  "measured report.run": "run {run}",
  "measured report.zero above": "Stands {off} above the others: its gauge had another zero. The line gives each run its own.",
  "measured report.zero below": "Stands {off} below the others: its gauge had another zero. The line gives each run its own.",
  "measured report.reading": "reading {reading}",
  "measured report.off the line": "{off} off the others; it still counts. Take it again.",
  "measured report.more off": {"one":"{n} more reading off the others.","other":"{n} more readings off the others."},
  "measured report.from here": "After reading {reading} the readings do not go on as before: nothing else is said of this feed until that is put right.",
  "measured report.take again": "take again",
  "measured report.turns too many": {"one":"just one turn too much: the turns look miscounted","other":"just {n} turns too much: the turns look miscounted"},
  "measured report.turns too few": {"one":"just one turn too little: the turns look miscounted","other":"just {n} turns too little: the turns look miscounted"},
  "measured report.sign": "the sign looks wrong",
  "measured report.swapped": "two figures look swapped: {reading} would fit",
  "measured report.figure too much": "one figure looks wrong: it is {by} too much",
  "measured report.figure too little": "one figure looks wrong: it is {by} too little",
  "measured report.plot off": "How far each reading lies off an even feed",
  "measured report.plot band": "within ±: where the line itself may lie, 95 times in 100",
  "measured report.plot back": "Return less out",
  "measured report.turns of the wheel": "turns of the handwheel",
  "measured report.off by": "A turn may be off by",
  "measured report.standard": "standard",
  "measured report.degrees": "readings to spare",
  "measured report.degrees of runs": "places to spare",
  "measured report.known": "known",
  "measured report.together": "together",
  "measured report.expanded": "× {factor} = ± {half} per turn, 95 times in 100",
  "measured report.factor as of": "{factor} (as with {degrees} to spare)",
  "measured report.millionths": "µin",
  "measured report.millionths meant": "µin: millionths of an inch.",
  "measured report.source scatter": "scatter of the readings",
  "measured report.source graduation": "graduation of the gauge",
  "measured report.source gauge error": "error limit of the gauge",
  "measured report.source temperature": "temperature",
  "measured report.how scatter": "scatter about the line ÷ root of the sum of (turns − mean)²",
  "measured report.how scatter of runs": "scatter of one run ÷ root of the sum of (places − mean)²",
  "measured report.how graduation": "graduation ÷ root 12, held in the scatter",
  "measured report.how graduation counts": "graduation ÷ root 12, more than the scatter shows",
  "measured report.how gauge error": "limit ÷ root 3, gathered over the turns measured",
  "measured report.how temperature": "growth of steel from 20 °C ÷ root 3: screw and gauge grow alike, the growth of one alone is the limit",
  "measured report.from turn": "from turn",
  "measured report.to turn": "to turn",
  "measured report.turn here": "a turn here",
  "measured report.ahead": "ahead of the mean at the end",
  "measured report.number": "no.",
  "measured report.turns": "turns",
  "measured report.out": "out",
  "measured report.return": "return",
  "measured report.line": "off the line",
  "measured report.as read": "As read",
  "measured report.more readings": {"one":"{n} more reading stands in the file.","other":"{n} more readings stand in the file."},
  "measured report.day": "Measured {day}.",
  "measured report.no day": "The file gives no day of measuring.",
  "measured report.by": "Measured by",
  "measured report.gauge": "Gauge",
  "measured report.temperature": "Room",
  "measured report.own record": "Measured on the machine by its owner, and worked out by the Guide to the Expression of Uncertainty in Measurement. It is no calibration certificate; measure again after any repair or adjustment.",
  "remarks.closes exactly": {"one":"closes exactly: {n} division to a turn","other":"closes exactly: {n} divisions to a turn"},
  "remarks.reads too much": "reads {each} too much each turn; {over} over {travel}",
  "remarks.reads too little": "reads {each} too little each turn; {over} over {travel}",
  "remarks.zone": "{perTurn} from turn {from} to {to}",
  "remarks.wave": "{size} ± {off}, furthest ahead at {crest} of a turn",
  "remarks.aim light": "Light machine: no more than the middle of the published range.",
  "remarks.aim firm": "Firm machine, says its file: up to the top of the published range.",
  "remarks.derated": "Published speeds × {factor}, as the machine file asks.",
  "remarks.motor doubtful": "{what}: measure before you trust a speed.",
  "remarks.near limit": "Near the limit and not measured: {positions}. Measure first.",
  "remarks.position read": "{position} ({speeds} rpm)",
  "remarks.pulley astray": "A pulley of {pulley} is not what the file says: no speed through it is known; measure first.",
  "remarks.one reading astray": "Reading of {which} cannot be right: it is wrong, or the motor or a pulley is not what the file says. No speed is known; measure first.",
  "remarks.readings astray": "Readings of {which} cannot be right: the motor or a pulley is not what the file says. No speed is known; measure first.",
  "remarks.reading not used": "Reading of {which} doubtful: not used, but held against the limits. Measure again.",
  "remarks.unusual motor": "{rpm} rpm is unusual for a motor: {least} to {most} rpm are usual",
  "remarks.unusual treadle": "{rpm} rpm is unusual for a treadle: {least} to {most} rpm are usual",
  "remarks.unusual hand": "{rpm} rpm is unusual for a hand crank: {least} to {most} rpm are usual",
  "remarks.not on these mains": "no induction motor runs at {rpm} rpm on {hertz} Hz",
  "remarks.beyond limit": "beyond the limit, do not use",
  "remarks.may reach": "may reach {rpm}, do not use",
  "remarks.never above": "never above {rpm}",
  "remarks.near limit, short": "near the limit, measure first",
  "remarks.measure first": "measure first",
  "remarks.reading doubtful": "reading doubtful",
  "remarks.feed questioned": "{wheel}: {why}: measure again before you trust it.",
  "remarks.worn": "{wheel} is worn: from place to place its travel differs from the mean by up to {most}. The ± of a distance holds that; the ± of a turn is that of the mean.",
  "remarks.wavy": "{wheel} leads and lags once a turn by up to {most}, which is in every ± here; whole turns are free of it.",
  "remarks.curved": "{wheel} strays along a curve: stretch by stretch its readings lie up to {most} off an even feed, which every ± here takes for chance. Measure by zones, with more readings.",
  "remarks.wild readings": {"one":"{wheel}: one reading lies off the others; it counts in the feed and its ± until it is taken again.","other":"{wheel}: {n} readings lie off the others; they count in the feed and its ± until they are taken again."},
  "remarks.far from nominal": "its feed is {times} times what the maker meant",
  "remarks.readings beyond travel": "its readings reach farther than it travels",
  "remarks.turn 0": "Turn 0 of the readings: {where}. Lay a rule there to see how far from it the slide stands.",
  "remarks.turn 0 not told": "The file does not say where the slide stood at turn 0 of the readings: without that place nothing is corrected, and every ± holds the wear.",
  "remarks.whole turns only": "the readings were taken at whole turns only: an error within the turn was not measured",
  "remarks.lost motion questioned": "lost motion of {turn} of a turn looks wrong: a very loose nut, or the two ways counted from different turns",
  "remarks.lost motion unknown": "lost motion not known: its readings contradict each other",
  "remarks.lost motion miscounted": "lost motion not known: a turn was miscounted on the way back",
  "remarks.lost motion wild": {"one":"lost motion not known: a reading on the way back does not fit the others","other":"lost motion not known: {n} readings on the way back do not fit the others"},
  "remarks.readings jump": "The readings of this handwheel jump on the way: until they are put right no turns can be given.",
  "remarks.turn miscounted": "A turn was miscounted in the readings of this handwheel: until they are put right no turns can be given.",
  "remarks.feed not given": "The feed of this handwheel is not given: no turns can be given.",
  "printer check.question": "How true does this printer print?",
  "printer check.across": "across",
  "printer check.down": "down",
  "printer check.step print": "Print at 100 %, never “fit to page”, on the paper of the dials; this page alone goes without the file’s correction. Let it lie, then tape it flat.",
  "printer check.step rule": "Steel rule in millimetres, good light, no worn end: begin at 10 mm and take 10 off.",
  "printer check.step inch rule": "Steel rule in fiftieths of an inch (hundredths: every second line), good light, no worn end: begin at 1 in and take 1 off.",
  "printer check.step top": "Top side: a graduation on the left corner. Whole millimetres at line 0 of the comb; the comb line that meets a graduation says the tenths. Line 0 between {least} and {most}, line 3 on a graduation: {reading}.",
  "printer check.step inch top": "Top side: a graduation on the left corner. Inches and fiftieths (0.02 in) at line 0 of the comb; the comb line that meets a graduation says how many times 0.002 in more. Line 0 between {least} and {most}, line 3 on a graduation: {reading}.",
  "printer check.step left": "Left side the same, from the bottom corner up.",
  "printer check.step diagonals": "Diagonals 1 and 2, from the top corners down. A short rule: to the cross, on from there, and add the two.",
  "printer check.step wrong": "More than 5 % off? Then it was printed “fit to page”, or the file’s paper ({paper}) is not the printer’s.",
  "printer check.rule": "rule",
  "printer check.comb": "comb",
  "printer check.side": "side",
  "printer check.must measure": "must be",
  "printer check.measured": "measured",
  "printer check.again": "again",
  "printer check.diagonal": "diagonal {number}",
  "printer check.then write": "Into the machine file, the means of these:",
  "printer check.none held": "The file holds no printer’s figures yet: its pages are printed as they are.",
  "printer check.held": "In the file now, for {printer}: {figures}. Other pages come out true by these; across is the short side of the sheet, down its long side, also where a page lies across it.",
  "printer check.held across": "across {measured} of {nominal}",
  "printer check.held down": "down {measured} of {nominal}",
  "printer check.held diagonals": "diagonals {first} and {second}",
  "printer check.printer": "Printer",
  "printer check.paper": "Paper",
  "printer check.date": "Date",
  "front.position": "belt",
  "front.speed": "rpm",
  "front.only position": "only one",
  "front.by ratio": "~ by ratio, not measured",
  "front.handwheel": "handwheel",
  "front.a turn": "travel of one turn",
  "front.division": "one division",
  "front.dial reads": "dial reads",
  "front.numbers grow": "numbers grow",
  "front.lost motion": "lost motion",
  "front.diameter": "diameter",
  "front.travel": "travel",
  "front.clockwise": "clockwise",
  "front.anticlockwise": "anticlockwise",
  "front.not measured": "not measured",
  "front.not given": "not given",
  "front.miscounted": "a turn miscounted: measure again",
  "front.scatters": "scatters",
  "front.speeds": "Speeds",
  "front.handwheels": "Handwheels",
  "front.cautions": "Before you start",
  "binder.binder": "Binder",
  "binder.contents": "Contents",
  "binder.contents by page": "Contents, by binder page",
  "binder.print": "Print at 100 %, never “fit to page”, and lay a steel rule on a page's check bar. Punch upright pages at the left, pages that lie across at the top.",
  "binder.not made": "Not in this binder: {sheets}.",
  "binder.keep": "A sheet of an older revision than the machine's is waste paper.",
  "binder.page": "binder {page}",
  "binder.missing turning": "it is for turning, and the file says kind: {kind}",
  "binder.missing drilling": "it is for drilling, and the file says kind: {kind}",
  "binder.missing room for the card": "a card of {width} × {height} does not fit on {paper}, where {across} × {down} are left inside its corner marks; choose larger paper, a smaller card or margin",
  "binder.missing room on few cards": "it would take {cards} cards; give them more room (card: in the template, drive: cover: in the machine file), or show less on them",
  "binder.missing room in margins": "its margins leave no room on {paper}; make them smaller, or choose larger paper",
  "binder.larger paper": "choose larger paper than {paper}",
  "binder.without": "without {name}, which is larger than the paper; {remedy}",
  "binder.missing everything": "the file holds nothing that this sheet shows",
  "binder.missing room": "a part is larger than the page; choose larger paper than {paper}",
  "binder.missing drive": "the file has no drive: give it a motor and stages",
  "binder.missing drive and feed": "the file has no drive, and no handwheel with a feed",
  "binder.missing feed, miscounted": "a turn was miscounted in the readings, and no other handwheel has a feed",
  "binder.missing feed": "no handwheel in the file has a feed",
  "binder.missing dial, uncertain": "no dial can be trusted as measured: check says why and what would help",
  "binder.missing dial": "no handwheel in the file has both a feed and a dial",
  "binder.missing vernier, no dial": "the dial that a vernier belongs to is not made: check says why",
  "binder.missing vernier": "no dial in the file asks for a vernier: give one vernier: 10",
  "binder.missing readings": "no handwheel in the file has readings: the measuring-form sheet says how to take them",
  "binder.missing job": "no job was given: name a job file with --job",
  "binder.missing scales": "the file has no scales",
  "binder.missing angle scales": "the file has no angleScales",
  "binder.missing scales of these": "none of the scales belongs to the handwheels asked for",
  "titles.angle scale": "Angle scales",
  "titles.belt card": "Belt card",
  "titles.dial choices": "Dial choices",
  "titles.dial": "Pieces to cut",
  "titles.drilling card": "Drilling card",
  "titles.engraving": "Engraving",
  "titles.hand feed": "Hand feed",
  "titles.measured report": "Measured report",
  "titles.measuring form": "Measuring form",
  "titles.plan": "Plan for the job",
  "titles.printer check": "Printer check",
  "titles.ring cutting": "Ring cutting",
  "titles.scales": "Scales",
  "titles.speed diagram": "Speed diagram",
  "titles.speed tree": "Speed tree",
  "titles.start readings": "Start readings",
  "titles.stops": "Stops and repeat lengths",
  "titles.student": "For the student",
  "titles.tapers": "Tapers",
  "titles.threads": "Threads by hand",
  "titles.turns": "Turns and distances",
  "titles.vernier": "Verniers",
  "materials and hazards.mild steel": "mild steel",
  "materials and hazards.free-cutting steel": "free-cutting steel",
  "materials and hazards.grey cast iron": "grey cast iron",
  "materials and hazards.tool steel": "tool steel",
  "materials and hazards.brass": "brass",
  "materials and hazards.bronze": "bronze",
  "materials and hazards.stainless steel": "stainless steel",
  "materials and hazards.aluminium": "aluminium",
  "materials and hazards.plastics": "plastics",
  "materials and hazards.acetal": "acetal",
  "materials and hazards.acrylic": "acrylic",
  "materials and hazards.rigid PVC": "rigid PVC",
  "materials and hazards.polystyrene": "polystyrene",
  "materials and hazards.free-cutting stainless steel": "free-cutting stainless steel",
  "materials and hazards.magnesium": "magnesium",
  "materials and hazards.PTFE": "PTFE",
  "materials and hazards.nylon": "nylon",
  "materials and hazards.zinc alloy": "zinc alloy",
  "materials and hazards.medium-carbon steel": "medium-carbon steel",
  "materials and hazards.high-carbon steel": "high-carbon steel",
  "materials and hazards.alloy steel": "alloy steel",
  "materials and hazards.copper": "copper",
  "materials and hazards.wrought iron": "wrought iron",
  "materials and hazards.hard wood": "hard wood",
  "materials and hazards.titanium": "titanium",
  "materials and hazards.zirconium": "zirconium",
  "materials and hazards.beryllium copper": "beryllium copper",
  "materials and hazards.wet oil": "cutting oil or soluble oil",
  "materials and hazards.wet plenty": "cutting oil, plenty; never let the tool rub",
  "materials and hazards.wet dry": "dry",
  "materials and hazards.wet air": "dry, or a little air; keep it cool",
  "materials and hazards.wet little air": "dry, or a little air",
  "materials and hazards.wet supplier": "only as the supplier of the material says",
  "materials and hazards.wet bronze": "dry; cutting oil for drilling and reaming",
  "materials and hazards.wet paraffin": "paraffin (kerosene) or soluble oil",
  "materials and hazards.wet no water": "dry; never water",
  "materials and hazards.wet zinc": "paraffin (kerosene) or dry",
  "materials and hazards.wet soluble": "soluble oil",
  "materials and hazards.wet beryllium": "cutting oil, plenty: it binds the dust",
  "materials and hazards.plastics wrap": "Plastics soften and wrap round the tool: stop to clear chips.",
  "materials and hazards.paraffin burns": "Paraffin (kerosene) on the work burns: no flame near it.",
  "materials and hazards.iron dust": "Cast iron dust: keep it off the slides and out of the lungs.",
  "materials and hazards.Magnesium": "Magnesium",
  "materials and hazards.Zirconium": "Zirconium",
  "materials and hazards.Titanium": "Titanium",
  "materials and hazards.Beryllium": "Beryllium",
  "materials and hazards.Fluoroplastics": "Fluoroplastics",
  "materials and hazards.PVC": "PVC",
  "materials and hazards.Wood": "Wood",
  "materials and hazards.magnesium burns": "Magnesium chips catch fire. Sharp tools; no fine feed, no dwell, nothing that rubs; below 213 m/min (700 ft/min). Cut dry. Sweep the chips up dry and often. Dry sand, or an extinguisher for burning metal, within reach: never water, liquid or foam.",
  "materials and hazards.zirconium burns": "Zirconium dust and fine chips catch fire from a spark or a rubbing tool. Sharp tools, firm feed, no dwell; clear the chips often and keep none in the shop. Dry sand, or an extinguisher for burning metal, within reach: never water on what burns.",
  "materials and hazards.titanium burns": "Titanium dust and fine chips catch fire. Sharp tools, firm feed, no dwell, nothing that rubs; clear the chips often. Dry sand, or an extinguisher for burning metal, within reach: never water on what burns.",
  "materials and hazards.beryllium poisons": "Beryllium dust and fumes harm the lungs for life, also from its alloys with copper. Never grind, sand or polish it; keep the cut and the chips wet, wipe up wet, never blow or sweep; wash before you eat. Not without a competent supervisor.",
  "materials and hazards.fluoroplastics poison": "Hot fluoroplastics (PTFE and its like) give off poisonous fumes: sharp tools, keep it cool, air the room. No smoking: a crumb of it in the glow is enough.",
  "materials and hazards.PVC poisons": "Hot PVC gives off acid fumes: if it smokes, stop and air the room.",
  "materials and hazards.wood harms": "Wood dust harms the lungs and burns: extract it, wear a mask, no flame near it. Dust of some woods (yew, iroko, cocobolo, rosewood, laburnum) poisons or sickens.",
  "materials and hazards.where safety practices": "ch. 4, safety practices",
  "materials and hazards.where zirconium": "zirconium",
  "materials and hazards.where titanium": "titanium",
  "materials and hazards.common practice": "common practice",
  "materials and hazards.source NFPA": "NFPA 484, combustible metals (from memory)",
  "materials and hazards.source safety at work": "US 29 CFR 1910, safety at work (from memory)",
  "materials and hazards.source army": "US Army TC 9-524, Fundamentals of Machine Tools (from memory)",
  "materials and hazards.source light metals": "a tool supplier's sheet for light metals",
  "materials and hazards.source magnesium": "a magnesium supplier's data sheet",
  "materials and hazards.source plastics machining": "a plastics supplier's machining guide",
  "materials and hazards.source plastics turning": "a plastics supplier's turning notes",
  "materials and hazards.source feeds": "a teaching workshop's sheet of feeds",
  "materials and hazards.source speeds": "a teaching workshop's sheet of cutting speeds and feeds",
  "materials and hazards.source pocket book": "a pocket-book of engineering formulae, p. 439 (19th century)",
  "materials and hazards.source recipes": "Scientific American recipes (19th century)",
  "materials and hazards.source tap speeds": "a tap maker's recommended speeds for taps",
  "materials and hazards.source tap table": "a tap maker's table of tapping speeds",
  "materials and hazards.source navy": "US Navy training course 14345, drilling",
  "materials and hazards.high-speed steel": "high-speed steel",
  "materials and hazards.carbon steel": "carbon steel",
  "materials and hazards.carbide": "carbide",
  "materials and hazards.machine file": "the machine file",
  "materials and hazards.figure for": "the figure for {what}",
  "materials and hazards.low-carbon steel": "low-carbon steel",
  "materials and hazards.plastics in general": "plastics in general",
  "materials and hazards.alloy steel under 250 HB": "alloy steel under 250 HB",
  "materials and hazards.alloy steel of 250 to 350 HB": "alloy steel of 250 to 350 HB",
  "materials and hazards.none for turning": "none was found for turning",
  "materials and hazards.none for drilling": "none was found for drilling",
  "materials and hazards.none for free-cutting steel": "none was read for free-cutting steel, which allows more",
  "materials and hazards.none for high-carbon steel": "none was read for high-carbon steel",
  "materials and hazards.none for alloy steel": "none was found for alloy steel",
  "materials and hazards.source own file": "the machine file",
  "no room.unnamed": "unnamed",
  "no room.pieces": "larger than the paper: {names}",
  "no room.table": "the table “{table}” needs {wants} across and has {has}",
  "no room.wider": "the table “{table}” is wider than {has}",
  "no room.card key": "the positions on the belt card need {wants} across and have {has}",
  "no room.card row": "a row of the belt card needs {wants} across and has {has}",
  "no room.too many cards": "{positions} positions need more than {cards} belt cards of this size",
  "no room.single row": "the belt card is too small for a single row beneath its cautions",
  "no room.shorter labels": "give the steps short labels, as A or 1 (each card explains the long ones); or {else}",
  "no room.larger cover": "name fewer materials (positions: { materials: 4 } in a template of your own), or give it more room: drive: cover: in the machine file, card: in a template of your own, or larger paper",
  "no room.bars": "the bars of the printer check have no room",
  "no room.words of bars": "the words of the printer check have no room between its bars",
  "step labels.open": "open",
  "step labels.direct": "direct",
  "step labels.geared": "geared",
  "step labels.open otherwise": "disengaged",
  "step labels.engaged": "engaged",
  "practice.unit turns": "turns",
  "practice.unit eighths": "turns, eighths",
  "practice.unit lines": "lines",
  "practice.right": "Right.",
  "practice.not marked": "Nothing can be marked here.",
  "practice.line meant": "The right line was {figure} {unit}, after {turns}.",
  "practice.line meant in row": "The right line was {figure} {unit}, row {row}, after {turns}.",
  "practice.turn the dial": "Turn the dial.",
  "practice.too many": "{counted} too many",
  "practice.too few": "{counted} too few",
  "practice.too far": "{counted} too far",
  "practice.short": "{counted} short",
  "practice.too much": "{length} too much",
  "practice.too little": "{length} too little",
  "practice.far too much": "Far too much: read once more what is asked, and in which unit.",
  "practice.too much or far": "{much}: {counted}",
  "practice.and also": "{one}, and {other}",
  "practice.waits too": "{off}; and you came back to it, and the slide waits: go back by more than the lost motion and come on.",
  "practice.waits": "The line is right, but you came back to it, and the slide waits: go back by more than the lost motion and come on.",
  "practice.which": "{n} turns, or {n} eighths? Write which.",
  "practice.write": "Write {example}.",
  "practice.turns as": "turns, as 2.5, 2 5/8, or 2 turns and 5 eighths",
  "practice.lines as": "a number, as 2.5",
  "practice.length as mm": "a length, as 2.5",
  "practice.length as in": "a length, as 1/8",
  "practice.choose": "Choose a position.",
  "practice.nowhere": "nowhere: ask",
  "practice.there is one": "There is a place for the belt.",
  "practice.no place": "That is no place for it.",
  "practice.too fast": "{counted} too fast.",
  "practice.too slow": "{counted} too slow.",
  "practice.part of turn": "{part} of a turn",
  "practice.part of line": "{part} of a line",
  "practice.part of eighth": "{part} of an eighth",
  "practice.positions": {"one":"{n} position","other":"{n} positions"},
};

/** Another language has its texts in the order of the English keys, which are long and stand here once; 0 where it has none. */
const keyed = (own: readonly (Text | 0)[]): Readonly<Record<Key, Text>> =>
  Object.fromEntries(
    Object.entries(en).map(([key, text], index) => [key, own[index] || text]),
  ) as Readonly<Record<Key, Text>>;

let de: Readonly<Record<Key, Text>> | undefined;

/** Those of another language are laid beside the English ones when they are first asked for: most runs need none. */
export const texts: Readonly<Record<LanguageCode, Readonly<Record<Key, Text>>>> = {
  en,
  get de() {
    de ??= keyed([
  ",",
  "capital",
  "mm",
  "Zoll",
  "U/min",
  "{list} und {last}",
  "ohne Stand",
  "Stand {revision}",
  "gemessen {day}",
  "Auf 100 % drucken, nie „an Seite anpassen“.",
  "Blatt",
  "Maschine",
  "Stand",
  "gemessen",
  "Seite",
  "{page} von {pages}",
  "ohne Angabe",
  "Betriebsanleitung, örtliche Vorschriften und fachkundige Aufsicht gehen diesem Blatt vor.",
  "Futter: nie über {rpm} U/min",
  "Futter: siehe Aufschrift",
  "nie über: Futter {chuck}, Spindel {spindle} U/min",
  "Spindel: nie über {spindle} U/min; Futter: siehe Aufschrift",
  "Karte {card} von {cards}",
  "{name}, Fortsetzung",
  "Für keinen Drucker berichtigt.",
  "Berichtigt für den Drucker {printer}",
  ": {factors}; längs: lange Bogenseite.",
  ": {factors}.",
  "quer × {factor}",
  "längs × {factor}",
  "Schiefe {skew}",
  "Soll von Ende zu Ende: {length} · {side}",
  "quer: kurze Seite des Bogens",
  "längs: lange Seite des Bogens",
  "Als Drehmaschine",
  "Aufgestellt, als Bohrmaschine",
  "Schutzbrille auf. Keine Handschuhe, Ringe, weiten Ärmel; lange Haare binden.",
  "Reitstock klemmen. Schlüssel aus dem Futter.",
  "Bohrfutter fest in die Pinole setzen: ein Bohrer, der hakt, zieht es heraus und reißt es herum.",
  "Mit dem Zentrierbohrer beginnen. Vorschub zurücknehmen, wenn der Bohrer durchbricht. Erst anhalten, dann Späne räumen, mit dem Pinsel.",
  "Werkstück spannen. Schlüssel aus dem Futter.",
  "Ein Bohrer, der hakt, schleudert ein loses Werkstück wie einen Propeller: nie mit der Hand halten.",
  "Die Maschine so stellen, dass sie nicht kippt: festschrauben. Vorschub zurücknehmen, wenn der Bohrer durchbricht.",
  "STECKER ZIEHEN",
  "FUSS VOM TRITT",
  "HAND VON DER KURBEL",
  "Stecker gezogen",
  "Fuß vom Tritt",
  "Hand von der Kurbel",
  "{off}, dann öffnen. Schlüssel aus dem Futter.",
  "Erst die Abdeckung schließen, dann einschalten. Nie schneller, als auf dem Futter steht, egal, was ein Blatt sagt.",
  "Große, lange oder unrunde Werkstücke langsam anfahren. Drehzahlen sind Richtwerte für scharfes Werkzeug und feste Spannung.",
  "Ein mit Absicht schlaffer Riemen rutscht früher, aber niemand weiß, bei welcher Last: er rettet keinen Finger.",
  "Spindel anhalten, dann messen oder einstellen.",
  "Eine neue Skala erst mit der Messuhr prüfen, bevor ihr ein Werkstück anvertraut wird.",
  "{off}. Spindel von Hand drehen.",
  "Ein Gewindebohrer oder Schneideisen unter Motorkraft bricht und nimmt die Hand mit.",
  "Eine halbe Drehung vor, eine viertel zurück, damit der Span bricht; Schneidöl bei Stahl. Grundlöcher oft räumen, mit dem Pinsel.",
  "Schlüssel aus dem Futter. Schutzbrille auf.",
  "Werkstück spannen, Schlüssel aus dem Futter. Schutzbrille auf.",
  "Vor dem Einschalten das Werkstück von Hand einmal ganz herumdrehen: nichts darf an Meißel, Schlitten oder Abdeckung stoßen.",
  "Zum Messen, Riemenumlegen und Späneräumen die Spindel anhalten. Späne sind heiß und scharf; Gussstaub gehört nicht in die Lunge und nicht auf die Führungen.",
  "Keine Stange darf hinten schlagen. Schlüssel aus dem Futter.",
  "Werkstück spannen, keine Stange darf schlagen. Schlüssel aus dem Futter.",
  "Lange Stangen schlagen hinter der Spindel: so ablängen, dass sie innen enden, oder langsam in einem Stützrohr laufen lassen.",
  "Nie mit Selbstgang gegen einen Anschlag fahren: er ist eine Lehre, keine Bremse.",
  "{off}, dann schwenken. Klemmen vor dem Start.",
  "Einen Probeschnitt nehmen und messen: die Gradteilung an der Maschine selbst stimmt selten auf ein Zehntelgrad.",
  "Den Bohrer bis zum Ende schneiden lassen, auch wo beim Durchbruch der Vorschub nachlässt, und gerade herausziehen: er darf sich nicht drehen, ohne zu schneiden.",
  "{material} nie fein vorschieben: seine feinen Späne brennen. Ein kleinster Vorschub war nirgends gedruckt zu finden: so grob vorschieben, wie Werkstück und Maschine es vertragen.",
  "{material} nie feiner als {feed} je Umdrehung vorschieben ({sources}): seine feinen Späne brennen.",
  "Riemen",
  "U/min",
  "Drehen: Durchmesser in {unit} je Drehzahl",
  "Bohrer in {unit} je Drehzahl (bis {most})",
  "{operation}: Durchmesser in {unit} je Drehzahl",
  "Durchmesser in {unit}",
  "mm",
  "Zoll",
  "alle",
  "bis {to}",
  "ab {from}",
  "{from}–{to}",
  "einzige",
  "Motor",
  "Tretrad",
  "Handkurbel",
  "Spindel",
  "Vorgelegewelle",
  "Vorgelegewelle {n}",
  "Werkstück spannen.",
  "Anfangen mit {position}, wie gezeichnet.",
  "Anfangen mit {position}.",
  "Gezeichnet: {position}.",
  "Ein Riemen passt nicht auf alle Stufen: {stages}. Nachmessen.",
  "Kein Platz für die Scheiben: im Drehzahlbaum.",
  "{sign} = {name}",
  "Leer: für diesen Werkstoff eine andere Zeile nehmen.",
  "Fast dieselbe Drehzahl, also eine von beiden: {positions}.",
  "/ eine von beiden: fast dieselbe Drehzahl.",
  "Weggelassen, weil der Motor ihre Drehzahlen bei anderen gibt: {positions}.",
  "~ gerechnet, nicht gemessen.",
  "! erst messen: nahe an der Grenze.",
  "? Messwert zweifelhaft: noch einmal messen.",
  "max: den Motor nicht höher drehen, wegen der Grenze.",
  "Kleine Zahlen: einzustellende U/min, vom kleineren zum größeren Durchmesser.",
  "Drehzahl unbekannt: erst messen.",
  "über der Grenze, nicht benutzen",
  "kann {rpm} erreichen, nicht benutzen",
  "Ein Maß in zwei Zeilen: die bis zu ihm.",
  "Kleine Durchmesser vertragen mehr.",
  "Größer als angegeben: hier zu schnell.",
  "Auch die langsamste Stellung ist zu schnell für {materials}.",
  "Keine Schnittwerte für {materials}.",
  "Keine Schnittwerte für {materials}; Warnung auf der Bohrkarte.",
  {"one":"{n} weiterer Werkstoff: Drehzahlschaubild.","other":"{n} weitere Werkstoffe: Drehzahlschaubild."},
  "Weitere Werkstoffe, im Drehzahlschaubild: {materials}.",
  "Weitere Werkstoffe, im Drehzahlschaubild mit ihren Warnungen: {materials}.",
  "U/min",
  "Riemen",
  "Linien ohne Platz, nur in der Liste: {speeds} U/min.",
  "Ohne Linie, weil langsamer oder schneller, als diese Arbeit verlangt: {speeds} U/min.",
  "Ohne Balken, weil nach Drehzahl oder Größe angegeben: {materials}.",
  "{material} ({figures}): {positions}",
  "{material}: {positions}",
  "{position} mit {rpm} U/min",
  "hier zu schnell",
  "ø {diameters} {unit} {place}",
  "Namen ausgeschrieben: {names}.",
  "Durchmesser des Werkstücks, {unit}",
  "Durchmesser des Bohrers, {unit}",
  "Schnittgeschwindigkeit, {unit}",
  "Vom Durchmesser gerade hinauf bis auf die Höhe des Balkens für den Werkstoff. Die Linie, die dort kreuzt, ist die Drehzahl, die Liste sagt, wohin der Riemen kommt; zwischen zwei Linien gilt die langsamere.",
  "Vom Durchmesser gerade hinauf bis auf die Höhe des Balkens für den Werkstoff. Jede Drehzahl zwischen den zwei Linien einer Riemenstellung wird am Motor eingestellt; ein Strich mit ihrem Namen verbindet sie.",
  "Die Punkte zeigen einen Weg: {material}, {diameter}: {rpm} U/min, Riemen {position}.",
  "{range} U/min",
  "× {from} bis {to}",
  "{factors} der nächstliegenden Werte.",
  "Nicht gezählt, weil doppelt oder halb so hoch wie die anderen: {sources}.",
  "Schnittgeschwindigkeiten aus: {sources}.",
  "; zum Teil aus dem Gedächtnis",
  "Motor",
  "Tretrad",
  "von Hand",
  "Spindel, U/min",
  "Lücke",
  "fast gleich",
  "~ gerechnet, nicht gemessen",
  "! erst messen, dann trauen",
  "× über der Grenze, nicht benutzen",
  "max: Motor nicht höher drehen, wegen der Grenze",
  "Wellen zwischen Motor und Spindel nur gerechnet",
  "Eine Drehzahl: nichts zu stufen.",
  "{slower} und {faster}",
  "Gleichmäßig gestuft wäre bei {n} Drehzahlen von {slowest} bis {fastest} U/min jede das {step}-Fache der vorigen; der nächste Stufensprung der Normzahlen ist {preferred}.",
  "Von {slowest} bis {fastest} U/min lässt sich jede Drehzahl einstellen.",
  "Von {slowest} bis {fastest} U/min lässt sich die Drehzahl einstellen, bis auf dies:",
  "Lücke zwischen {pairs}.",
  "Fast gleich: {pairs}.",
  "{names} und {n} weitere",
  "Riemen",
  "Ein mit Absicht schlaffer Riemen rutscht, bevor etwas bricht; bei welcher Last, sagen diese Zahlen nicht: nicht darauf verlassen, dass er Finger oder Meißel rettet.",
  "{belt}: Auf diesen Riemen drückt eine Spannrolle; die Länge mit einer Schnur messen.",
  "{belt}: kein Achsabstand in der Datei, daher keine Riemenlänge.",
  "Stufe",
  "treibend",
  "getrieben",
  "Riemenlänge",
  "Umschlingung der kleinen Scheibe",
  "Grad",
  "Wellen verschieben",
  "{unit}, − zueinander",
  "Motordrehzahl",
  "einzige",
  "{belt}, offener Riemen, Achsabstand {centres}",
  "{belt}, gekreuzter Riemen, Achsabstand {centres}",
  "Ein Riemen genügt für alle Stufen: Die Längen unterscheiden sich um {apart}.",
  "Ein Riemen genügt nicht für alle Stufen: Die Längen unterscheiden sich um {apart}; die Wellen wie gezeigt verschieben für einen Riemen von {shortest}, oder eine Spannrolle anbauen.",
  "Ein Zahnriemen wird nach Zähnen gekauft, nicht geschnitten.",
  "Stumpf verbundener Riemen: {shortest} in halber Dicke, weniger die Dehnung nach Angabe des Herstellers, die in der Maschinendatei fehlt.",
  "Stumpf verbundenen Riemen auf {length} schneiden: Er läuft dann um {percent} % gedehnt. Was die Verbindung braucht, dazugeben.",
  "Unter 120° Umschlingung (fett) rutscht der Riemen leicht: Mehr Abstand oder eine Spannrolle hilft.",
  "Ein Keilriemen wird endlos gekauft, nach seiner Wirklänge: {shortest}.",
  "Motor {rpm} U/min",
  "Tretantrieb: Rad {rpm} U/min",
  "Handantrieb: Rad {rpm} U/min",
  "{speed} bei {hertz} Hz",
  "{stage} läuft gekreuzt: die Welle dreht andersherum",
  "Schlupf unbekannt",
  "Schlupf nicht gemessen: die wahren Drehzahlen sind etwas niedriger",
  ", oder bei leer laufendem Motor bis {percent} % höher, woran die Grenzen gemessen sind",
  "{percent} schneller, als Typenschild und Scheiben ergeben: der Motor läuft leer, oder eine Scheibe ist anders als in der Datei",
  "mittlerer Schlupf {percent}",
  "Schlupf: {slips}",
  "{driver} auf {driven}",
  " über ein Zwischenrad",
  "direkt",
  "Grenze des Futters fehlt: siehe Aufschrift auf dem Futter",
  "mit dem Futter nie über {rpm} U/min",
  "die Spindel nie über {rpm} U/min",
  "Keilriemen {section}: Wirklinie {depth} unter dem Scheibenrand angenommen ({source}); {other} sagt {otherDepth}, wodurch Drehzahlen bis zu {most} % anders wären",
  "Zoll-Rillentafel eines Riemenherstellers",
  "ISO 4183:1995 (aus dem Gedächtnis)",
  "{operation}, {tool}: Riemenstellung und U/min nach Durchmesser in {unit}",
  "{operation}, {tool}: Riemenstellung und U/min nach Gewinde",
  "Spindel von Hand drehen, {off}: {operations}. Weder Rechts-/Linkslauf noch Rutschkupplung sind bekannt; ohne sie bricht ein Werkzeug, das im Loch klemmt.",
  "Spindel von Hand drehen, {off}: {operations}. Keine Stellung ist langsam genug, um rechtzeitig anzuhalten und umzusteuern.",
  "Keine: keine Drehzahl dieser Maschine ist bekannt.",
  "Keiner der Bohrer ist so klein, wie es die Datei verlangt.",
  "Keine Schnittwerte für {materials}.",
  "keine Werte",
  "zu schnell",
  "von Hand",
  "einzige",
  "Unter einem Trennstrich: die letzte Größe davor | der Durchmesser am Strich | die erste Größe dahinter.",
  "Unter einem Trennstrich: der Durchmesser dort.",
  "Eine Größe genau an einem Trennstrich: die Stellung links davon.",
  "Ein Trennstrich ohne Zahl hat keinen Platz für eine: vom Bohrer gerade hinabgehen.",
  "Zwei Drehzahlen in einem Feld: was am Motor einzustellen ist, vom kleineren zum größeren Durchmesser.",
  "~ gerechnet, nicht gemessen.",
  "! erst messen: nahe an der Grenze.",
  "? noch einmal messen: ein Messwert davon kann nicht stimmen.",
  "Schwarz: auch die langsamste Stellung ist zu schnell oder über einer Grenze.",
  "Kleine Bohrer vertrügen mehr Drehzahl, als da ist.",
  "Maschinengewindebohrer; von Hand braucht es keine Drehzahl. Tiefenanschlag setzen und umsteuern, oder die Kupplung rutschen lassen, bevor der Grund erreicht ist.",
  "Bis {rpm} U/min steuert die Hand rechtzeitig um.",
  "Was die Datei selbst an Schnittgeschwindigkeit angibt, gilt, wie es dort steht.",
  "Tiefe je Umdrehung: kein Handrad einer Pinole ist bekannt, oder nicht sein Weg je Umdrehung; in der Maschinendatei angeben.",
  "Tiefe nach Umdrehungen: {wheel}",
  "ganze Umdr.",
  "und",
  "Vorschub des Bohrers in {material}: {wheel}",
  "Bohrer",
  "U/min",
  "Vorschub je Umdrehung",
  "was zu zählen ist",
  "beim kleinsten Vorschub",
  "Vorschübe aus {sources}. Beim Durchbrechen nachlassen; zum Ausräumen der Späne herausziehen, wenn das Loch drei Bohrerdurchmesser tief ist.",
  "Vorschübe aus {sources}, der gröbste für jeden Bohrer, und keine Drehzahl, bei der eine Hand feiner vorschiebt; zum Ausräumen der Späne herausziehen, wenn das Loch drei Bohrerdurchmesser tief ist.",
  "Feine Späne von {material} brennen. {end} Wo die Hand hinter einem groben Vorschub zurückbleibt, eine langsamere Stellung nehmen.",
  "Nr. {number}",
  "Buchstabe {letter}",
  "Drehen",
  "Schlichtdrehen",
  "Plandrehen",
  "Ausdrehen",
  "Abstechen",
  "Formdrehen",
  "Rändeln",
  "Gewindedrehen",
  "Bohren",
  "Reiben",
  "Senken",
  "Gewindebohren",
  "Gewinde mit Schneideisen",
  "Durchmesser des Werkstücks",
  "Außendurchmesser, von außen nach innen",
  "Durchmesser der Bohrung",
  "größter Durchmesser unter dem Meißel",
  "Außendurchmesser des Gewindes",
  "Durchmesser des Bohrers",
  "Durchmesser der Reibahle",
  "größter Durchmesser des Senkers",
  "zu schnell für die Hand",
  "fein",
  "mittel",
  "grob",
  "Vorschub",
  "Riemen",
  "U/min",
  "einzige",
  "{sign} nie in {materials}.",
  "1 Umdrehung = {travel}",
  "1 Umdr.: Schlitten {travel}",
  "1 Skt = {division}",
  "Minuten für {length}",
  "{counts} s",
  "{parts} : {counts} s",
  "{minutes} min",
  "¼ : {counts} s",
  "{parts} Skt : {counts} s",
  "–",
  "4 s: eine Umdrehung des Rades dauert 4 Sekunden.",
  "2 min: so lange für eine Umdrehung, von Hand kaum ein Vorschub.",
  "3 : 2 s: drei Umdrehungen in 2 Sekunden.",
  "¼ : 9 s: eine Viertelumdrehung in 9 Sekunden.",
  "5 Skt : 1 s: fünf Skalenteile des Skalenrings in 1 Sekunde.",
  "–: zu schnell für die Hand.",
  "–: weniger als eine Sekunde je Umdrehung, zu schnell für die Hand.",
  "Sekunden laut zählen, gleichmäßig drehen.",
  "max",
  "× über der Grenze, nicht benutzen.",
  "Über der Grenze, nicht benutzen: {positions}.",
  "{position} ({rpm} U/min)",
  "max: den Motor nicht höher drehen, wegen der Grenze.",
  "! erst messen: nahe an der Grenze.",
  "? noch einmal messen: ein Messwert davon kann nicht stimmen.",
  "~ gerechnet, nicht gemessen.",
  "{material} {finishing} Schlichten, {roughing} Schruppen",
  "Veröffentlichte Vorschübe je Umdrehung, {unit}, für große Drehmaschinen, die zum Schruppen also das Äußerste für eine leichte Maschine: {feeds}; Abstechen {parting}{not}. Aus: {sources}.",
  ", aber nicht {materials}",
  "{parts} Umdrehungen in {counts} Sekunden",
  "1 Umdrehung je Sekunde",
  "2 Umdrehungen je Sekunde",
  "zu langsam zum Zählen",
  "1 Skt je Sekunde",
  "{count} Sekunden je Umdrehung",
  "{count} Sekunden je Vierteldrehung",
  "{count} Skt je Sekunde",
  "{parts} Skt in {counts} Sekunden",
  "{count} Sekunden je Skt",
  "Ablesemarke",
  "so gedreht wächst der Skalenwert",
  "die Naht: Enden stumpf",
  "die Naht: Lasche darunter",
  "1. Umdr.",
  "2. Umdr.",
  "3. Umdr.",
  "{turn}. Umdr.",
  "1 Skt {division}",
  "oben {upper}, unten {lower}",
  "im Durchmesser",
  "als Weg",
  "Stand {revision}",
  "1 Umdr. = {feed}",
  "kann um {doubt} auf {travel} falsch sein",
  "zeigt auf {travel} {error} zu viel",
  "zeigt auf {travel} {error} zu wenig",
  "Obere Skala: {scale}",
  "Untere Skala: {scale}",
  "der letzte Skalenteil ist nur {last}: ganze Umdrehungen zählen und jede mit ihrem Anfangswert beginnen",
  "der letzte Skalenteil ist {last}: ganze Umdrehungen zählen und jede mit ihrem Anfangswert beginnen",
  "{rows} Reihen, der Reihe nach abzulesen, je Umdrehung eine, dann wieder von vorn",
  "In welchem Sinn die Zahlen wachsen, sagt die Datei nicht: angenommen ist im Uhrzeigersinn",
  "der Weg endet, bevor die Skala einmal herum ist: keine Umdrehungen zählen",
  "beginnt mit jeder Umdrehung neu, sodass sich nichts aufsummiert, läuft aber nicht über die Null weiter",
  "geht genau auf",
  "geht auf, so genau der Weg je Umdrehung bekannt ist",
  "geht nicht auf",
  "zeigt je Umdrehung {turn} zu viel, {error} auf {travel}",
  "zeigt je Umdrehung {turn} zu wenig, {error} auf {travel}",
  "Wie genau der Weg je Umdrehung bekannt ist, ist nicht angegeben: {names}.",
  "mehr vom Weg wurde nicht gemessen, darüber hinaus ist nichts gesagt",
  "Mit Absicht ungleich geteilt: der gemessene Fehler innerhalb der Umdrehung ist eingerechnet. Die Null gehört dorthin, wo das Handrad bei Umdrehung 0 der Ablesungen stand.",
  "Nonius mit {parts} Teilen auf {spans} Skalenteile: zeigt {count}",
  "von {from} bis 0 nicht mit dem Nonius ablesen: er reicht über den kurzen letzten Skalenteil",
  "feiner, als der Weg je Umdrehung auf {travel} bekannt ist",
  "Zu klein für seine Teilung: Striche im Abstand von {apart} verschwimmen. Gröber teilen, einen größeren Skalenring nehmen oder einen gröberen mit Nonius.",
  "Eng: Striche im Abstand von {apart}. Eine gröbere Teilung, auch mit Nonius, schont die Augen.",
  "Dieser Skalenring ist selbst in Teilen zu groß für das Papier: in der Datei größeres Papier wählen.",
  {"one":"In {n} Teil.","other":"In {n} nummerierten Teilen, die zusammen genau aufgehen."},
  {"one":"Seine {n} Reihe ist nur {height} hoch, zu niedrig für Zahlen: auf einem breiteren Ring oder Streifen haben sie Platz.","other":"Seine {n} Reihen sind nur je {height} hoch, zu niedrig für Zahlen: auf einem breiteren Ring oder Streifen, mit weniger Reihen oder einer einzigen Skala haben sie Platz."},
  "Seine Ziffern sind bis {far} gut zu lesen; ein breiterer Ring oder Streifen hat Platz für größere.",
  "Von Marke zu Marke schneiden, mitten durch die Striche, die über die Kante laufen; der Pfeil zeigt zur Kante an der Ablesemarke. Innenkreise und hohle Kanten zuerst, die Enden zuletzt.",
  "Eine runde Kante mit Strichen verläuft gleichmäßig innerhalb der Strichenden, um {over}: das Papier in die Schere drehen, nicht die Schere um das Papier; die Ecken um einen ganzen Ring sind die des Quadrats, das er gerade berührt.",
  "Einen Ring vor dem Ausschneiden nach seinem Kreuz zentrieren.",
  "Hat ein Teil nicht das Maß, das darunter steht: mit der Korrektur des Druckers neu drucken.",
  "Was als „nicht aufgedruckt“ angegeben ist, fand keinen Platz: daneben anschreiben.",
  "Papier biegt sich leicht um eine Linie längs der Laufrichtung: die Laufrichtung quer zum Streifen legen.",
  "Exemplar {copy}",
  "Exemplar {copy}, in Reserve",
  "Teil {piece} von {pieces}",
  "nicht aufgedruckt: {words}",
  "ein Skalenteil",
  "einer von {divisions} Skalenteilen",
  "zwischen den Schnittenden",
  "Schnittende bis Laschenlinie",
  "mit der Lasche",
  "Außendurchmesser",
  "Lochdurchmesser",
  "längs der Außenkante",
  "gerade von Ecke zu Ecke",
  "gerade an der breitesten Stelle",
  "Radien der Kanten",
  "Fehler auf {travel}",
  "Fehler: beginnt jede Umdrehung neu",
  "{names}: so aufgeklebt und abgelesen",
  {"one":"{name} und {n} weiterer: so aufgeklebt und abgelesen","other":"{name} und {n} weitere: so aufgeklebt und abgelesen"},
  "{name}: Ablesemarke",
  "Nonius {count}",
  "{name}: Nonius, zeigt {count}",
  "seine 0 ist die Ablesemarke",
  "{name}: unbedruckt, zum Anpassen",
  "geht so gut auf, wie der Weg je Umdrehung bekannt ist: {error}",
  "der letzte Skalenteil ist kurz: {short} statt {division}, {width} breit auf dem Papier",
  "der letzte Skalenteil ist lang: {last} statt {division}, ein Strich davor liefe mit der Nullmarke zusammen",
  "beginnt jede Umdrehung neu bei null: ganze Umdrehungen zählen, jede {turn}",
  "sein Strich läuft mit der Nullmarke zusammen",
  "{n} Reihen, eine für jede von {n} Umdrehungen: geht nach {divisions} Skalenteilen genau auf",
  "{n} Reihen, eine für jede von {n} Umdrehungen: geht so gut auf, wie der Weg je Umdrehung bekannt ist; {error}",
  "geht in höchstens {most} Reihen nicht auf; mit {n} Reihen: {error}",
  "der Weg endet, bevor Reihe {n} beginnt: eine Reihe genügt",
  "{travel} Weg (keiner angegeben)",
  "{travel} Weg",
  "{length} der Skala",
  "{travel} (kein Weg angegeben)",
  "der Weg je Umdrehung selbst ist auf ± {off} über {over} bekannt",
  "{marks} Teilstriche sind zu viele zum Zeichnen",
  "ein Skalenteil ist mehr als eine Umdrehung",
  "Teilstriche im Abstand von {apart} sind zu eng zum Ablesen",
  "Teilstriche stehen eng: {apart} Abstand",
  "jede Reihe ist nur {height} hoch: zu niedrig für ihre Zahlen",
  "zeigt Zoll",
  "zeigt Millimeter",
  "unter {least}",
  "Von Marke zu Marke schneiden, mitten durch die Striche, die über die Kante laufen. Innenkreise und hohle Kanten zuerst, die Enden zuletzt.",
  "gleichmäßig",
  "wahre Teilstriche",
  "{n} Reihen",
  "gewählt",
  "wie die Datei verlangt",
  "geht genau auf",
  "geht innerhalb der ± des Wegs je Umdrehung auf",
  "beginnt jede Umdrehung neu, der letzte Skalenteil nur {size}",
  "beginnt jede Umdrehung neu, der letzte Skalenteil {size}",
  "{out} je Umdrehung",
  "{out} auf {travel}",
  "Strichabstand {size}",
  "Strichabstand {size}: eng",
  "Strichabstand {size}: zu eng zum Ablesen",
  "eine Reihe ist {size} hoch: zu niedrig für ihre Zahlen",
  "zu viele Striche zum Zeichnen",
  "ein Skalenteil ist mehr als eine Umdrehung",
  "In wahrer Größe um die Null gezeichnet. + zeigt zu viel, − zu wenig.",
  "Nonius {count}",
  "zeigt {count}",
  "{parts} auf {spans} Skt",
  "feiner, als der Weg je Umdrehung über {travel} bekannt ist",
  "Auf das feste Teil kleben, so dass er die Skala berührt.",
  "Auf das feste Teil kleben, so dass er die Skala berührt, seine 0 dort, wo die Ablesemarke stünde.",
  "{wheel}: seine 0 ist die Ablesemarke",
  "Die 0 des Nonius steht hinter {main}, dem letzten Teilstrich links von ihr. Strich {mark} trifft einen Teilstrich der Skala.",
  "Die 0 des Nonius steht hinter {main}, dem letzten Teilstrich rechts von ihr. Strich {mark} trifft einen Teilstrich der Skala.",
  "In wahrer Größe gezeichnet.",
  "In {times}facher Größe gezeichnet.",
  "Kleiner gezeichnet, als er ist.",
  "{name} (Längenskala)",
  "der Weg je Umdrehung von {wheel} ist nicht bekannt, also haben seine Umdrehungen keine Länge.",
  {"one":"In {n} Teil.","other":"In {n} nummerierten Teilen, die stumpf stoßen und zusammen genau aufgehen."},
  "Striche im Abstand von {apart} verschwimmen: gröber teilen oder weniger Teile je Umdrehung wählen.",
  "{part} Umdr. ({length})",
  "vom ersten Strich bis ans Ende",
  "{name} (Gradskala)",
  "{name} (Gradscheibe)",
  "Sie ist größer als das Papier: {remedy}.",
  "einen kleineren Radius oder größeres Papier wählen",
  "einen kleineren Radius, einen kleineren Bereich oder größeres Papier wählen",
  "im Uhrzeigersinn",
  "gegen den Uhrzeigersinn",
  "am Futter dünn",
  "am freien Ende dünn",
  "Gradscheibe für den Spindelkopf: ihre Zahlen wachsen, wenn die Spindel vom Reitstock aus gesehen im Uhrzeigersinn gedreht wird, unter einer Ablesemarke oben. Spindel steht, {off}; von Hand drehen.",
  "links von 0: von oben gesehen {sense}",
  "rechts von 0: von oben gesehen {sense}",
  "links von 0: von oben gesehen {sense}, {small}",
  "rechts von 0: von oben gesehen {sense}, {small}",
  "(Futter links, Werkzeug auf der Bedienseite)",
  "Die Skala dreht sich mit dem Teil an einer festen Ablesemarke vorbei.",
  "Die Skala steht fest; die Ablesemarke dreht sich mit dem Teil.",
  "Für einen blanken Zylinder vom Radius {radius}.",
  "Ein Kegel wird um seinen halben Kegelwinkel geschwenkt. Vor Gebrauch an einem Probestück oder mit dem Sinuslineal prüfen.",
  "links",
  "rechts",
  "Radius der Kante mit den Strichen",
  "links und rechts von 0",
  "{name}: Nonius, zeigt {minutes} Minuten",
  "die Hälfte auf der Seite des Skalenwerts lesen",
  "ein Nonius mit {parts} Teilen ist zu lang für diesen Radius und diese Teilung",
  "{length} je Umdrehung",
  "{length} Durchmesser je Umdrehung",
  "Die Skala beginnt jedes Mal wieder bei null: ganze Umdrehungen zählen und den Anfangswert der Umdrehung zum Skalenwert addieren.",
  "Umdr.",
  "beginnt bei",
  "{rows} Reihen zu {division}, eine je Umdrehung, laufen weiter: {cost}. Dazu diese Reihen in der Maschinendatei verlangen.",
  "{rows} Reihen zu {division}, eine je Umdrehung, liefen durch: {cost}. Für ihre Zahlen ist dieser Skalenring zu schmal; {width} von Kante zu Kante würden genügen. Bis dahin bei den Werten unter „{column}“ bleiben.",
  "Keine runde Teilung, die auf diesen Skalenring passt, geht in bis zu sechs Reihen auf: bei den Werten unter „{column}“ bleiben.",
  "sie gehen genau auf",
  "{each} falsch je Umdrehung, {over} auf {travel}",
  "Skalenteile zu {division} gehen auf",
  "Umdr.",
  "Skt",
  "falsch um",
  "genau",
  "unter {least}",
  "Zahnräder für eine Skala auf eigener Welle",
  "am Handrad",
  "an der Skala",
  "Übersetzung",
  "Skala je Umdr.",
  "falsch je Umdr. der Skala",
  "~: weniger, als der Weg je Umdrehung falsch sein kann.",
  "+ zeigt zu viel. Ein Zwischenrad, wo der Drehsinn bleiben muss.",
  "Vorhandene Zahnräder in der Maschinendatei angeben; dann steht hier, welches Paar, eines auf der Welle des Handrads und eines unter einer eigenen Skala, die Skala aufgehen lässt.",
  "Kein Paar der angegebenen Zahnräder lässt diese Skala aufgehen.",
  {"one":"in {n} Umdrehung {divisions} genau","other":"in {n} Umdrehungen {divisions} genau"},
  {"one":"in {n} Umdrehung {divisions}, {out} daneben","other":"in {n} Umdrehungen {divisions}, {out} daneben"},
  "{wheel}, Reihe {row} von {rows}",
  {"one":"{n} Strich, ein Skalenteil {size}; von null in der Richtung, in der der Skalenwert wächst.","other":"{n} Striche, ein Skalenteil {size}; von null in der Richtung, in der der Skalenwert wächst."},
  "Der letzte Skalenteil, zurück zur Null, ist {last} statt {division}.",
  "Eine eingeschlagene {figure} heißt {value}.",
  "Lang {long}, mittel {middle}, kurz {short}; alle von der Kante an der Ablesemarke aus.",
  "Kurbel {ratio} : 1, genau: {turns} Umdrehungen je Skalenteil: {ways}.",
  "Kurbel {ratio} : 1: kein Lochkreis hat genau {turns} Umdrehungen.",
  "{holes} von {circle}",
  {"one":"{n} Umdrehung + {holes} von {circle}","other":"{n} Umdrehungen + {holes} von {circle}"},
  " oder ",
  "Verbundteilen, genau: {first} vor, dann Kurbel und Scheibe {second} vor{round}.",
  "Verbundteilen, genau: {first} vor, dann Kurbel und Scheibe {second} zurück{round}.",
  "Verbundteilen: {first} vor, dann Kurbel und Scheibe {second} vor{round}; jedes Mal {angle} falsch, {reading} Skalenwert, wenn alle geteilt sind.",
  "Verbundteilen: {first} vor, dann Kurbel und Scheibe {second} zurück{round}; jedes Mal {angle} falsch, {reading} Skalenwert, wenn alle geteilt sind.",
  ", was {divisions} Skalenteile weiter führt: {divisions} Mal herum",
  "Ausgleichsteilen, genau: {holes}; Räder von der Spindel zur Scheibe {drivers} treiben {driven}, Zwischenräder so, dass die Scheibe mit der Kurbel läuft.",
  "Ausgleichsteilen, genau: {holes}; Räder von der Spindel zur Scheibe {drivers} treiben {driven}, Zwischenräder so, dass die Scheibe gegen die Kurbel läuft.",
  "{one} und {other}",
  "Nächste Löcher des Lochkreises {circle}, von null gezählt (in der Tabelle): kein Strich mehr als {angle} falsch, {reading} Skalenwert; kein Fehler summiert sich.",
  "Zahnrad mit {teeth} Zähnen als Teilscheibe: Raste in jede Zahnlücke.",
  "Zahnrad mit {teeth} Zähnen als Teilscheibe: {step} Zahnlücken weiter.",
  {"one":"Zahnrad mit {teeth} Zähnen und {detents} Rasten, jede 1/{detents} Zahn weiter als die vorige: {n} Schritt von 1/{detents} Zahn weiter.","other":"Zahnrad mit {teeth} Zähnen und {detents} Rasten, jede 1/{detents} Zahn weiter als die vorige: {n} Schritte von 1/{detents} Zahn weiter."},
  "Zahnräder mit {first} und {second} Zähnen auf einem Dorn, das zweite trägt die Raste des ersten: ein Skalenteil ist {one} am {first}er und {other} am {second}er.",
  {"one":"{n} Zahn vor","other":"{n} Zähne vor"},
  {"one":"{n} Zahn zurück","other":"{n} Zähne zurück"},
  "Übersetzung und Lochscheiben des Teilkopfs oder vorhandene Zahnräder in der Maschinendatei angeben, um Löcher und Zähne zu zählen; die Winkel dienen jedem anderen Weg, etwa einer Gradscheibe auf der Spindel.",
  "Kein Zahnrad der Liste, allein oder mit Rasten, teilt diesen Ring: nach den Winkeln, oder mit einer Gradscheibe auf der Spindel.",
  "Nr.",
  "Winkel",
  "Umdr. +",
  "von {circle}",
  "Zahl",
  "{title}: {length} längs der Kante",
  "Drehachse: {length} sind 360 Grad",
  "Kein Skalenring der Datei hat einen blanken Durchmesser: ein um Papier gemessener Umfang sagt nichts über das Metall.",
  "Der ganze Weg ist weniger als eine Umdrehung: der Skalenwert allein gibt ihn an.",
  "Hier ist nichts anzugeben: der Weg hat keine ganze Umdrehung und kein rundes Maß, das größer ist als sein ±.",
  "Nicht auf diesem Blatt: {wheel}. {why}",
  "1 Umdrehung = {feed}, gemessen",
  "1 Umdrehung = {feed}, wie in der Datei angegeben",
  "1 Umdrehung = {feed} nach dem Nennmaß der Gewindespindel, nicht gemessen",
  "1 Umdrehung = {feed} nach dem Nennmaß der Zahnstange, nicht gemessen",
  "die Skala zeigt den Weg",
  "die Skala zeigt den Durchmesser",
  "1 Skt = {size}",
  "Umkehrspiel {length}, {part} Umdrehung",
  "Umkehrspiel bis {length}, {part} Umdrehung, wo es am größten ist",
  "Nennwert {length}",
  "1 Umdrehung der alten Skala zeigt {length} Weg",
  "1 Umdrehung der alten Skala zeigt {length} Durchmesser",
  "{unit} Weg, alte Skala",
  "{unit} Durchmesser, alte Skala",
  "was die alte Skala zeigt, ist nicht angegeben; sie wird nicht berichtigt",
  "± (95 %) umfasst {parts}.",
  "den Weg je Umdrehung",
  "die Streuung einer Stelle",
  "ein nach Augenmaß abgelesenes Zehntel eines Skalenteils",
  "Das Ablesen der alten Skala kommt zum ± hinzu: wie fein sie geteilt ist, hat niemand gesagt.",
  "Stets von derselben Seite anfahren; von beiden Seiten kommt das Umkehrspiel hinzu.",
  "Stets von derselben Seite anfahren; von beiden Seiten kommt das Umkehrspiel hinzu, und das ist nicht bekannt.",
  "Nur über {read} von {travel} gemessen: jenseits des Doppelten wird kein Fehler und kein ± genannt (–). Weiter messen.",
  "Eigene Wege",
  "Weg",
  "Durchmesser",
  "Umdr.",
  "Skala",
  "Reihe",
  "Dasselbe auf der alten Skala",
  "Weg, den sie zeigt",
  "Durchmesser, den sie zeigt",
  "unberichtigt falsch um",
  "Ganze Umdrehungen",
  "ganze Umdr.",
  "Skala 0 ist",
  "Die Skala beginnt jede Umdrehung wieder bei null: ganze Umdrehungen zählen und den Wert unter „Skala 0 ist“ zum Skalenwert addieren.",
  "Nennwert falsch um",
  "Falsch um: was diese Skala mehr (−: weniger) als den wahren Weg zeigt.",
  "Falsch um: was diese Skala im Durchmesser mehr (−: weniger) zeigt, als wirklich abgenommen wird.",
  "± im Ø",
  "Berichtigt über die gemessene Strecke",
  "Diese einstellen statt der Werte oben, wenn ein Maßstab zeigt, wie weit der Schlitten am Anfang der Bewegung von Umdrehung 0 steht: ein Wert stimmt in seiner ganzen Spalte auf das ± seiner Zeile, zwischen zwei wird nichts gerechnet. Umdrehungen + was die Skala dann zeigt, {unit}. Jenseits des Gemessenen gilt hier nichts (–). Was hier fehlt: wie oben.",
  "Diese drehen statt der Werte oben, wenn ein Maßstab zeigt, wie weit der Schlitten am Anfang der Bewegung von Umdrehung 0 steht: ein Wert stimmt in seiner ganzen Spalte auf das ± seiner Zeile, zwischen zwei wird nichts gerechnet. Jenseits des Gemessenen gilt hier nichts (–). Was hier fehlt: wie oben.",
  "Maßstab bei",
  "{from} bis {to}",
  "{turns} + {figure}, Reihe {row}",
  "{turns} Umdrehungen",
  "keine ganze Umdrehung, dann zeigt die Skala {figure} {unit}",
  {"one":"{n} Umdrehung, dann zeigt die Skala {figure} {unit}","other":"{n} Umdrehungen, dann zeigt die Skala {figure} {unit}"},
  "keine ganze Umdrehung, dann zeigt die Skala {figure} {unit}, Reihe {row}",
  {"one":"{n} Umdrehung, dann zeigt die Skala {figure} {unit}, Reihe {row}","other":"{n} Umdrehungen, dann zeigt die Skala {figure} {unit}, Reihe {row}"},
  "{setting}, Reihe {row}",
  "Das Werkstück leicht ankratzen, vorwärts kommend. {zero} Nicht dahinter zurückdrehen.",
  "Skala auf 0.",
  "Das Rad dort anzeichnen.",
  "Aufschreiben, was die Skala zeigt.",
  "Skala auf 0; lässt sie sich nicht stellen: aufschreiben, was sie zeigt.",
  "Ohne Skala das Rad anzeichnen.",
  "Weiter um die Umdrehungen und bis zum Skalenwert der Tabelle.",
  "Weiter um die Umdrehungen der Tabelle, dann bis zur Summe aus dem Aufgeschriebenen und dem Wert.",
  "Weiter um die Umdrehungen und bis zum Skalenwert der Tabelle; ein Wert mit + kommt zum Aufgeschriebenen hinzu.",
  "Den Anschlag an den Schlitten legen, ohne ihn zu verschieben. Den Anschlag klemmen.",
  "Den Anschlag anlegen, ohne den Bohrer zu verschieben. Den Anschlag klemmen.",
  "Weiter zurück als das Umkehrspiel, dann mit derselben leichten Hand an den Anschlag: fest, und die Skala wie zuvor.",
  "Ein Teil fertigen, messen, den Anschlag um den Unterschied versetzen (Fühllehre oder Skala sagt, um wie viel), dann die übrigen.",
  "Keine Anschläge in der Datei: die Umdrehungen stehen auf dem Blatt der Umdrehungen und Wege.",
  "{stop}: {why}",
  "Dieses Handrad steht nicht in der Datei.",
  "Anschlag",
  "Stück",
  "Länge",
  "Handrad",
  "Umdr.",
  "dann zeigt die Skala",
  "dann geht die Skala weiter um",
  "dann zeigt die Skala, oder geht weiter um (+)",
  "{counts}, Reihe {row}",
  "{turns} + {figure}, Reihe {row}",
  "gleich, am Anschlag",
  "gleich, nach Skala",
  "Umkehrspiel",
  "erstes Teil",
  "verlangt auf",
  "das hält",
  "Anschlag, Skala",
  "nur Anschlag",
  "keines",
  "?, nicht die Skala",
  "?",
  "über den Weg hinaus",
  "–: keine Skala, die Umdrehungen sagen alles.",
  "+: die Skala lässt sich nicht auf 0 stellen, oder niemand hat gesagt, dass sie es kann. Den Wert zu dem zählen, was sie beim Ankratzen zeigte; eine ganze Umdrehung ist es jedes Mal, wenn sie wieder darauf kommt; von einer Summe über einer Umdrehung eine abziehen: {turns}.",
  "Gleich, am Anschlag oder nach Skala: wie gleich die Teile werden, jedes von derselben Seite angefahren.",
  "Wie gleich die Teile werden, wurde nicht gemessen: dieselben Stellen in zwei Läufen oder mehr ablesen, oder jedes Teil messen.",
  "Von beiden Seiten kommend käme das Umkehrspiel hinzu: nie tun.",
  "Das Umkehrspiel ist nicht bekannt: nur von einer Seite kommen.",
  "Erstes Teil: so weit kann seine Länge falsch sein, bis es gemessen und der Anschlag versetzt ist.",
  "? ist nicht bekannt. Gleich: dieselben Stellen in zwei Läufen oder mehr ablesen, oder jedes Teil messen. Umkehrspiel: nur von einer Seite kommen.",
  "Verlangt auf: vom kürzesten Teil zum längsten.",
  "Das hält: was von beiden die Teile darin hält.",
  "Nur Anschlag: die Skala allein hält es nicht, den Anschlag nehmen.",
  "Keines: so wie gemessen wird die Toleranz nicht gehalten. Etwas stehen lassen, jedes Teil messen, von Hand fertig machen.",
  "Ob die Toleranz gehalten wird, wurde nicht gemessen. Jedes Teil messen.",
  "„?“: ob die Toleranz gehalten wird, wurde nicht gemessen. Jedes Teil messen.",
  "{stops}: das erste Teil kann weiter daneben sein als verlangt. Messen und den Anschlag versetzen, erst dann das nächste.",
  "Über den Weg hinaus: den Anschlag in zwei Schritten setzen oder das Werkstück umsetzen.",
  "Berichtigt über die gemessene Strecke: {wheel}",
  "Maßstab bei",
  "Wenn ein Maßstab zeigt, wie weit der Schlitten am Anfang der Bewegung von Umdrehung 0 steht: ein Wert stimmt in seiner ganzen Spalte auf das ± seiner Zeile, zwischen zwei wird nichts gerechnet. Jenseits des Gemessenen gilt hier nichts (–). Anschläge, die hier fehlen: wie oben.",
  "Werte: Umdrehungen des Handrads.",
  "Werte: Umdrehungen + was die Skala dann zeigt, {unit}.",
  "Werte: Umdrehungen + um was die Skala danach weitergeht, von dem an, was sie beim Ankratzen zeigte, {unit}; von einer Summe über einer Umdrehung ({turn}) eine abziehen.",
  "dazwischen",
  "Endmaß oder Bohrerschaft am Anschlag",
  "Den Schaft messen, nicht seinem Namen glauben. Herausgenommen ist der Weg um genau sein Maß länger: zwei Längen oder Tiefen an einem Anschlag. Umdrehungen + um was die Skala danach weitergeht:",
  "Gleiche Teile von der Stange, mit Anschlag in der Spindel",
  "{off}. Den Anschlag in der Spindelbohrung klemmen, dass er nicht wandert: ein Pfropfen mit Zugschraube, oder ein am hinteren Ende gehaltener Stab.",
  "Den Rohling dagegen schieben, Futter oder Spannzange schließen und anziehen: Backen, die ziehen, rücken ihn vom Anschlag ab, um etwa gleich viel, wenn man sie gleich schließt.",
  "Das erste Teil plandrehen und dort die Skala auf 0 stellen, vorwärts kommend. Alle Längen zählen von dieser Fläche.",
  "Jeden Absatz von derselben Seite auf denselben Skalenwert drehen; das erste messen, das dritte, dann jedes zehnte.",
  "Keine Stange darf hinten aus der Spindel stehen: ohne Stütze biegt sie sich und schlägt. Rohlinge so schneiden, dass sie innen enden.",
  "Von oben gesehen, man steht unten im Bild. Der Pfeil: wohin schwenken, und um wie viel: der Schwenkwinkel der Tabellen.",
  "am freien Ende dünn",
  "am Futter dünn",
  "Oberschlitten: im Uhrzeigersinn schwenken",
  "Oberschlitten: gegen den Uhrzeigersinn schwenken",
  "Spindelstock: im Uhrzeigersinn schwenken",
  "Spindelstock: gegen den Uhrzeigersinn schwenken",
  "Eigene Kegel",
  "Drehen und prüfen",
  "Genormte und übliche Kegel",
  "1 : {n}",
  "Körnerspitze 60°",
  "Kegelstift 1:48",
  "Kegel",
  "1 : n",
  "im Durchmesser,",
  "Zoll auf 1 Fuß",
  "{unit} auf {length}",
  "Kegelwinkel",
  "Schwenkwinkel",
  "Messuhr steigt",
  "Umdrehungen {wheel}",
  "für diesen Anstieg",
  "Sinuslineal {length}",
  "0,1° falsch: im Durchmesser",
  "Länge",
  "groß, klein",
  "auf dem Schlitten",
  "Abfall im Radius",
  "zwei Stifte im Abstand {length}, Unterschied",
  "Reitstock versetzen",
  "{unit} auf {length} Werkstück",
  "2 Züge",
  "2 Züge: der Schlitten fährt nur {travel}. In zwei Zügen drehen oder, wo es dasteht, den Reitstock versetzen.",
  "–: Nicht durch Versetzen des Reitstocks. Über etwa 8° Kegelwinkel tragen einfache Spitzen nur auf den Kanten ihrer Bohrungen (Werkstattbrauch).",
  "Unter den Umdrehungen: ganze + was die Skala dann zeigt, am Anfang des Kegels auf 0 gestellt.",
  "Unter den Umdrehungen: ganze + um was die Skala danach weitergeht, von dem an, was sie am Anfang des Kegels zeigte; von einer Summe über einer Umdrehung ({turn}) eine abziehen.",
  "Abfall im Radius: im Durchmesser doppelt so viel. Stifte: zwei, deren Mitten so weit auseinander liegen, füllen eine Lehre des Kegelwinkels. Reitstock: auf jede solche Länge des Werkstücks zwischen den Spitzen, nicht nur des Kegels.",
  "Schwenkwinkel = halber Kegelwinkel. Messuhr: im Stahlhalter gegen einen Prüfdorn oder fertigen Kegel, der Bettschlitten fährt längs der Achse, nicht auf dem geschwenkten Schlitten.",
  "Genormte Kegel nach: Dimensions of Standard Tapers (vintagemachinery.org), johnfsworkshop.org, Lobben S. 477, US Army OD1645. * letzte Ziffer aus dem Gedächtnis.",
  "Papierlehren des Schwenkwinkels",
  "Auf der dünnen Linie selbst schneiden: hier ist die Kante die Lehre. Eine Schere trifft etwa ein Zehntelgrad, also mit der Messuhr prüfen.",
  "{name}: Schwenkwinkel {angle}°",
  "{angle}°",
  "{name}: rechte Kante {rise} höher als die linke auf {length}",
  "Keine Papierlehre für {names}: unter {least}° Schwenkwinkel ist eine Schere zu grob. Mit der Messuhr einstellen.",
  "Oberschlitten: im Uhrzeigersinn schwenken",
  "Oberschlitten: gegen den Uhrzeigersinn schwenken",
  "Spindelstock: im Uhrzeigersinn schwenken",
  "Spindelstock: gegen den Uhrzeigersinn schwenken",
  {"one":"Ein größeres Gewinde fehlt hier: sein Kernlochbohrer ist größer als {largest}, der größte dieser Maschine.","other":"{n} größere Gewinde fehlen hier: ihre Kernlochbohrer sind größer als {largest}, der größte dieser Maschine."},
  "Nr. {number}",
  "Metrisches Regelgewinde",
  "Metrisches Feingewinde",
  "Grobgewinde UNC",
  "Feingewinde UNF",
  "British Association, BA",
  "Whitworth-Gewinde BSW",
  "Whitworth-Feingewinde BSF",
  "32 und 40 Gang auf 1 Zoll, Whitworth-Form",
  "Gewinde",
  "Maß",
  "P",
  "Kern {percent} %",
  "Bohrer",
  "voll",
  "Bolzen",
  "Umdr.",
  "! eng: dieser Bohrer lässt mehr als {most} % der vollen Gewindetiefe stehen, schwer für einen Gewindebohrer von Hand (Werkstattbrauch). Stattdessen das Kernloch für {percent} % bohren.",
  "+ kein Kernlochbohrer veröffentlicht: der nächste gebräuchliche über dem Loch für {percent} %.",
  "* Maß aus dem Gedächtnis, nicht gedruckt gesehen: den Gewindebohrer messen.",
  "Kern {percent} %: Kernloch = Maß − {share} × volle Gewindetiefe im Durchmesser, das sind 1,299 Steigungen (60°), 1,281 (Whitworth) oder 1,2 (BA); den nächsten Bohrer nehmen, in hartem Werkstoff den größeren. Bohrer: der in Tabellen übliche, und welchen Anteil der vollen Tiefe er stehen lässt. Bolzen für das Schneideisen = Maß − Steigung ÷ 10 (Werkstattbrauch). Umdr.: Umdrehungen von Gewindebohrer oder Schneideisen auf diese Länge.",
  "Wo für ein Zoll- oder BA-Gewinde nur ein metrischer Bohrer veröffentlicht ist: der nächstgelegene, den es in Zoll gibt.",
  "Maße und Bohrer aus: {sources}.",
  "DIN 76-1 (aus dem Gedächtnis)",
  "Lochtabelle einer freien CAD-Bibliothek (metrische Bohrer dort nach ISO 2306, Whitworth nach BS 1157)",
  "eine Bohrer- und Gewindetafel, Spalte 75 %",
  "Gedächtnis: Maß nicht gedruckt gesehen",
  "BA-Gewindetafel eines Schraubenhändlers",
  "Whitworth-Maße eines Schraubenherstellers",
  "Seitenmeißel",
  "Bohrmeißel",
  "{depth} plandrehen",
  "auf Länge {length} plandrehen",
  "{wheel} zurück auf 0 und geklemmt. Von außen nach innen vorschieben; danach {facing} geklemmt stehen lassen.",
  "{wheel} dicht an das Werkstück und geklemmt. Von außen nach innen vorschieben; danach {facing} geklemmt stehen lassen.",
  "Von außen nach innen vorschieben. Den Schlitten klemmen, der die Zustellung gibt.",
  "Maße zählen von der fertigen Planfläche; was ein Minus hat, kommt noch ab.",
  "Letzter Schnitt: anhalten, ganze Länge messen. Was zu viel ist, kommt noch ab, was immer die Skala zeigt.",
  "Letzter Schnitt: anhalten, ganze Länge messen. Was zu viel ist, kommt noch ab, was immer die Skala zeigt: weiter um das Zuviel {times}, {counted}.",
  "auf {size} längsdrehen, {length} lang",
  "auf {size} längsdrehen, von {from} bis {to}",
  "Absatz auf {size} drehen, {length} lang",
  "Absatz auf {size} drehen, von {from} bis {to}",
  "auf {size} ausdrehen, {depth} tief",
  "auf {size} ausdrehen, von {from} bis {to} tief",
  "nach außen, zu sich hin",
  "nach innen",
  "{size} ({least} bis {most})",
  "Jeden Skalenwert {sense} anfahren; wer darüber kommt, dreht eine halbe Umdrehung zurück (das Umkehrspiel ist nicht bekannt) und kommt neu.",
  "Jeden Skalenwert {sense} anfahren; wer darüber kommt, dreht eine ganze Umdrehung zurück (das Umkehrspiel ist {lost} Umdrehung) und kommt neu.",
  "Jeden Skalenwert {sense} anfahren; wer darüber kommt, dreht eine halbe Umdrehung zurück (das Umkehrspiel ist {lost} Umdrehung) und kommt neu.",
  "Die Schneide steht quer zur Achse, damit der Absatz rechtwinklig wird.",
  "Die ersten Schnitte nehmen nur weg, was der Bohrer weiter innen enger gelassen hat.",
  "Nach außen läuft die Skala rückwärts: Umdrehungen und Skalenteile gegen ihre Zahlen zählen.",
  "Stechmeißel {width} breit",
  "abstechen, {length} lang",
  "Bei Durchmesser {diameter}. Dicht am Futter, Schlitten geklemmt, ruhige Hand. Das Teil nie mit der Hand auffangen.{wet}",
  "{width} breit auf {size} einstechen, von {from} bis {to}",
  "Gerade und stetig bis zum Skalenwert einstechen; nicht verweilen.{wet}",
  "Kegelsenker 90°",
  "Bohrmeißel, Schneide unter 45°",
  "45°-Meißel",
  "am Ende",
  "an der Kante bei {at}",
  "Fase {size} × 45°, {edge}, in der Bohrung",
  "Fase {size} × 45°, {edge}",
  "Die Lochkante ringsum ankratzen, dann nach Skalenwert weiter, bis die Senkung {mouth} weit ist; langsam, sonst rattert es.",
  "Die Kante mit der Mitte der schrägen Schneide ankratzen, dann nach Skalenwert zum Futter hin weiter.",
  "Die Kante mit der Mitte der schrägen Schneide ankratzen, dann nach Skalenwert vom Futter weg weiter.",
  "Rändelzange",
  "Rändelhalter",
  "rändeln, Teilung {pitch}, von {from} bis {to}",
  "rändeln, Teilung {pitch}, {length} lang",
  "Alle Stellen gelten für die futterseitige Kante des Rändelrads: die Planfläche mit dieser Kante ankratzen. Beginnen, wo die andere Kante bei {at} steht: diese Stelle vorher anreißen (mit der Breite des Rändelrads in der Auftragsdatei steht hier ein Skalenwert dafür).",
  "Alle Stellen gelten für die futterseitige Kante des Rändelrads: die Planfläche mit dieser Kante ankratzen.",
  "Der Durchmesser wächst um etwa {rise} (Werkstattbrauch): das Muster erst an einer Umdrehung von Hand prüfen, dann den Motor einschalten.",
  "Öl, langsam, einmal kräftig zustellen; Späne nur bei stehender Maschine abbürsten.",
  "kein Werkzeug",
  "Drehmeißel, genau auf Mitte",
  "Kegel {large} auf {small} über {length}, {towards}",
  "Kegel {large} auf {small} über {length}, ab {at}, {towards}",
  "am freien Ende dünn",
  "am Futter dünn",
  "Mit „zurück“ bezeichnete Werte liegen vor 0: dort ist der Meißel am Anfang noch frei und schneidet erst weiter innen.",
  "Den Winkel nach dem zweiten Schnitt prüfen: an beiden Enden messen. Ist der Kegel fertig, das Geschwenkte zurückstellen und prüfen.",
  "die Spitze steht {at} von der Planfläche",
  "die Spitze steht an der Planfläche",
  "im Uhrzeigersinn",
  "gegen den Uhrzeigersinn",
  "zu sich hin",
  "von sich weg",
  "Zuerst den Oberschlitten, von oben gesehen, {sense} um {degrees}° schwenken (halber Kegelwinkel) und so weit zurückdrehen, dass sein ganzer Hub vor ihm liegt. Erst dann ankratzen und einstellen, was folgt, in dieser Reihenfolge: {begin}, während der Durchmesser angekratzt wird. Nur mit dem Oberschlitten vorschieben.",
  "Zuerst den Spindelstock, von oben gesehen, {sense} um {degrees}° schwenken (halber Kegelwinkel). Erst dann ankratzen und einstellen, was folgt: {begin}, während der Durchmesser angekratzt wird. Entlang des Betts vorschieben. Was quer zum Werkstück liegt, liegt solange nicht quer zum Bett: nichts plandrehen, bohren oder abstechen, bis der Spindelstock zurückgestellt und am Prüfdorn geprüft ist.",
  "Zuerst den Reitstock um {over} {towards} verstellen (nach dem Sinus, für {between} zwischen den Spitzen). Spitze fetten. Erst dann ankratzen und einstellen, was folgt: {begin}, während der Durchmesser angekratzt wird. Danach zurückstellen und am Prüfdorn prüfen.",
  "Das Teil spannen, auf eine Unterlage, in die der Bohrer gehen darf; nie mit der Hand halten.",
  "{what}, in {n} Löchern",
  "{what}, in {n} der {of} Löcher",
  {"one":"{what}, in Loch „{name}“","other":"{what}, in {n} Löchern „{name}“"},
  "{what}, in {n} der {of} Löcher „{name}“",
  {"one":"{what}, in einem anderen Loch","other":"{what}, in {n} anderen Löchern"},
  "In {n} Löchern: jedes Werkzeug in allen, bevor das nächste kommt. Jeden Körnerpunkt darunter bringen und neu spannen. Die Null vom ersten gilt für alle, solange der Tisch und das, worauf das Teil liegt, bleiben, wie sie sind; sonst neu ankratzen.",
  "In {n} Löchern: jedes Werkzeug in allen, bevor das nächste kommt. Das Teil für jedes neu setzen, sein Körnerpunkt genau in der Achse, und neu spannen.",
  "Zentrierbohrung {pilot}",
  "Zentrierbohrer, Spitze {pilot}",
  "So tief, bis der Kegel etwa {mouth} weit ist, {depth} ab Aufsetzen der Spitze. Die Spitze bricht leicht: ohne Gewalt, oft ausräumen, nie langsam und mit Druck.",
  "{size} bohren, {depth} tief",
  "{name} ({size})",
  "{size} reiben, {depth} tief",
  "Spiralbohrer",
  "Spiralbohrer (mehrere)",
  "Reibahle",
  "Spindel von Hand drehen, {off}: in der Datei steht weder Rechts-/Linkslauf noch Rutschkupplung.",
  "Nacheinander: {drills}, jeder neu angekratzt; alle mit der Drehzahl des größten, die die kleineren auch vertragen.",
  "Den Bohrer zum Ausräumen der Späne ganz zurückziehen, sooft er um seinen Durchmesser eingedrungen ist.",
  "Die Tiefe zählt, ab wo der volle Durchmesser eintritt; die Spitze geht {tip} tiefer.",
  "In einem Zug stetig reiben, nie rückwärts drehen.{wet}",
  "Kernloch für {share} % der vollen Tiefe: {hole}.",
  "Das Loch von {hole} gibt {share} %.",
  "Vorher auf {size} ansenken.",
  "Mit dem Vorschneider anfangen, dann der nächste. Den letzten {mark} ab der Spitze markieren: tief genug, wo die Marke die Planfläche erreicht. Sein Anschnitt, {lead}, geht über das volle Gewinde hinaus.",
  "Bolzen etwa {rod}, dieser hat {now}; sein Ende mit 45° auf etwa {core} anfasen, damit das Schneideisen gerade anschneidet.",
  "Ein Absatz steht {room} dahinter: Umdrehungen zählen und nach ihm fühlen. Für die letzten Umdrehungen das Schneideisen wenden, die Seite ohne Anschnitt voran.",
  "Gewinde {thread} bohren, {depth}",
  "Gewinde {thread} mit Schneideisen, {depth}",
  "Gewindebohrer, gerade geführt vom Bohrfutter",
  "Gewindebohrer, gerade geführt vom Futter im Reitstock",
  "Schneideisen im Halter, der auf der Reitstockpinole gleitet",
  "{off}, Riemen ab oder schlaff: die Spindel von Hand am Futter oder an der Scheibe drehen. Nie mit Motor.",
  "{turns} Umdrehungen ab dem Fassen für {length} volles Gewinde und die {lead} des Anschnitts.",
  "{counted} Das Gewinde beginnt {begins} hinter der Planfläche, wo auch das enge Loch beginnt.",
  "{turns} Umdrehungen für {length}.",
  "{begun} Für die ersten zwei Umdrehungen leicht nachdrücken, dann zieht es sich selbst hinein und die Pinole folgt nur. Eine halbe Umdrehung vor, eine viertel zurück, um den Span zu brechen; nach {halfTurns} Umdrehungen ({half}) herausdrehen und ausräumen.{wet}",
  "{begun} Für die ersten zwei Umdrehungen leicht nachdrücken, dann zieht es sich selbst hinein und die Pinole folgt nur. Eine halbe Umdrehung vor, eine viertel zurück, um den Span zu brechen; nach {halfTurns} Umdrehungen ({half}) herausdrehen und ausräumen.{wet}",
  "Klemmt es: keine Gewalt. Sofort zurückdrehen, Späne ausräumen, leicht neu versuchen; klemmt es noch, ist das Loch zu eng oder der Gewindebohrer am Grund.",
  "Klemmt es: keine Gewalt. Sofort zurückdrehen, Späne ausräumen, leicht neu versuchen; klemmt es noch, ist der Bolzen zu dick oder das Schneideisen sitzt schief.",
  "im Futter",
  "im Futter an {size}",
  "{chuck}, das freie Ende auf gefetteter Spitze",
  "zwischen gefetteten Spitzen, mit Drehherz mitgenommen",
  "einige hundertstel Millimeter",
  "einige tausendstel Zoll",
  "umspannen: {out} herausstehend, {by}",
  "neu spannen: {out} herausstehend, {by}",
  "Die Backen beginnen über einer dünneren Stelle: darauf achten, dass sie ab {from} hinter dem freien Ende ringsum anliegen.",
  "{still}; Futterschlüssel abgezogen, bevor irgendetwas anderes geschieht.",
  "Dünnes Messing- oder Kupferblech unter die Schraube des Drehherzes legen: es sitzt auf einer fertigen Fläche.",
  "Dünnes Messing- oder Kupferblech zwischen Backen und fertige Fläche legen und mit der Messuhr prüfen: ein Futter läuft jedes Mal um {out} unrund.",
  "Reitstock und Pinole geklemmt, Spitze gefettet und gerade ohne Spiel; nachprüfen, wenn das Werkstück warm wird.",
  "Spitzen sauber und in Flucht: ein leichter Schnitt an beiden Enden muss gleich messen. Die im Reitstock ist gefettet und gerade ohne Spiel; nachprüfen, wenn das Werkstück warm wird.",
  "Erst alle Teile bis hierher; dann alle von hier an, umgespannt.",
  "Der Anschlag in der Spindel wird für dieses Ende neu gestellt: alle Teile stehen gleich weit heraus.",
  "Von hier an zählen Längen von der fertigen Planfläche des neuen Endes.",
  " Kühlschmierung: {what}.",
  "Feine Späne von {material} brennen: Vorschub {feed} je Umdrehung, der gröbste gedruckte für diesen Bohrer ({sources}).",
  "{rule} Dieser Schnitt: {feed}.",
  "{rule} Eine Reibahle nimmt wenig: eine scharfe, ohne Halt vorgeschoben und gerade wieder heraus.",
  "Bei stehendem Motor ankratzen, das Werkstück von Hand gedreht: ein schabender Meißel entzündet Späne. Einmal im Schnitt, ohne Halt bis zum Ende vorschieben.",
  "Bei stehendem Motor ankratzen, das Werkstück von Hand gedreht: ein schabender Meißel entzündet Späne. Alle Schnitte sind gleich tief, denn ein dünner letzter gibt feine Späne; keiner wird zweimal genommen. Ohne Halt bis zum Ende vorschieben, und der Meißel ist frei, bevor die Maschine steht.",
  "Tisch und Säule geklemmt; Pinole frei, ohne Spiel.",
  "Schlitten straff, aber über den ganzen Weg frei: Stellleisten gerade angezogen. Was nicht gebraucht wird, ist geklemmt.",
  "Teil auf dem Tisch oder im festgespannten Schraubstock gespannt, mit Unterlage; Bohrer läuft rund.",
  "Werkstück fest; eine ganze Umdrehung von Hand gedreht, Schlitten an beiden Enden jedes Schnitts: nichts berührt Backen, Spitze oder Stahlhalter.",
  "Maschine steht, Stecker gezogen",
  "Maschine steht, Fuß vom Tritt",
  "Maschine steht, Hand von der Kurbel",
  "{still}.",
  "Meißel scharf, auf Mitte, kurz eingespannt und fest.",
  "Anschläge gestellt, wo der Plan Anschlag sagt, und mit freiem Meißel ausprobiert.",
  "Kühlschmierung: {what}; Pinsel zur Hand, keine Lappen.",
  "Riemen liegen, wie der erste Schritt sagt, und ziehen durch; Abdeckung zu.",
  "Futterschlüssel ab, Schraubenschlüssel weg, Schutzbrille auf; keine Handschuhe, Ringe, losen Ärmel oder offenen Haare.",
  "Manche lassen den Riemen gerade so schlaff, dass er rutscht, bevor ein Werkzeug bricht. Das ist Werkstattbrauch, hier nicht gerechnet: ein schlaffer Riemen springt auch ab, verbrennt und bleibt ohne Warnung stehen; er ersetzt weder leichte Schnitte noch die Hand am Schalter.",
  "Die Datei sagt nicht, wie schnell das Futter laufen darf: seine Aufschrift lesen und nie darüber gehen.",
  "{wheel}: {touch}; {set}.",
  "den Skalenring nicht anfassen und aufschreiben, was er zeigt: {label} = __________, Umdrehung 0",
  "anzeichnen, wo das Handrad steht: von dort zählen die Umdrehungen",
  "Skalenring auf 0 stellen",
  "{wheel} ist verschlissen: jetzt, und sooft hier wieder angekratzt wird, einen Maßstab anlegen, ehe es weitergeht. Der Schlitten steht ________ {unit} von seiner Stelle bei Umdrehung 0 der Ablesungen ({where}).",
  "Durchmesser {size} leicht ankratzen, von außen kommend",
  "Bohrung {size} leicht ankratzen, von innen kommend",
  "Die fertige Planfläche leicht ankratzen",
  "Das Ende, wie es ist, leicht ankratzen",
  "Die fertige Planfläche mit der futterseitigen Ecke des Stechmeißels leicht ankratzen",
  "Das Ende, wie es ist, mit der futterseitigen Ecke des Stechmeißels leicht ankratzen",
  "Das rohe Ende leicht ankratzen",
  "Die Kante leicht ankratzen",
  "Wo der erste Gang fasst",
  "Wo der volle Durchmesser gerade in die fertige Planfläche eintritt",
  "Wo der volle Durchmesser gerade in das Ende, wie es ist, eintritt",
  "Mit der Spitze am Beginn des Schnitts (Skalenwert „Beginn bei“, wo unten einer steht), alles andere geklemmt",
  "Wo die Spitze das Ende berührt",
  "{wheel}, ab {zero}",
  "{wheel}, ab {zero} (Schritt {number})",
  "dem Durchmesser {size}",
  "der Bohrung {size}",
  "der fertigen Planfläche",
  "dem Ende, wie es ist",
  "dem rohen Ende",
  "der Kante",
  "dem Eintritt des vollen Durchmessers",
  "dem Fassen des ersten Gangs",
  "dem Beginn des Schnitts",
  "dem Aufsetzen der Spitze",
  "Der Schlitten fährt {by} von {travel}: vor dem Ankratzen weit zurückdrehen.",
  "Nicht {size}? Weniger gemessen: den Unterschied vom Aufgeschriebenen abziehen. Mehr gemessen: dazuzählen.",
  "Nicht {size}? Der Unterschied {times} = ________ {counted}. Weniger gemessen: vom Aufgeschriebenen abziehen. Mehr gemessen: dazuzählen.",
  "Nicht {size}? Weniger gemessen: den Unterschied statt 0 einstellen. Mehr gemessen: die Skala um so viel vor 0 stellen.",
  "Nicht {size}? Der Unterschied {times} = ________ {counted}. Weniger gemessen: das statt 0 einstellen. Mehr gemessen: die Skala um so viel vor 0 stellen.",
  "Nicht {size}? Der Unterschied {times} = ________ {counted}. Mehr gemessen: ab hier jedes Mal um so viel mehr. Weniger gemessen: weniger.",
  "Nicht {size}? Der Unterschied {times} = ________ {counted}. Weniger gemessen: ab hier jedes Mal zurück um so viel mehr. Mehr gemessen: weniger.",
  "zurück {turns}",
  "ohne Skala",
  "Skalenringe, die sich nicht auf 0 stellen lassen: beim Ankratzen aufschreiben, was der Ring zeigt (S1, S2 …). Für einen Skalenwert jedes Mal eine ganze Umdrehung zählen, wenn der Ring wieder auf diese Zahl kommt, dann weiter bis zur Summe. Eine ganze Umdrehung ist: {turns}. Von einer Summe über einer Umdrehung eine Umdrehung abziehen, zu einer unter 0 eine dazuzählen.",
  "Ergibt: {sizes}.",
  "Durchmesser {size}",
  "Länge {size}",
  "nach dem Maßstab eingestellt",
  "Tiefe {size}",
  "dünnes Ende {size}",
  "dickes Ende {size}",
  "mehr als die Toleranz: vor dem letzten Schnitt noch einmal messen",
  "„Ergibt“ und „untereinander gleich“ zählen im schlechtesten Fall zusammen: was an Weg je Umdrehung und Schlitten unsicher ist, jede Ablesung auf ein Zehntel Teilstrich, dazu nach Werkstattbrauch {touch} je Ankratzen mit dem Werkzeug, {gauge} für die Messschraube.",
  "Eine Tiefe dazu {entered} für das Auge, das den vollen Durchmesser eintreten sieht.",
  "Teile untereinander gleich auf {to}",
  "{drill}: {count}",
  "Vorschub mit {wheel}: {count}.",
  {"one":"{n} Minute","other":"{n} Minuten"},
  "{hours} Stunden",
  "{least} bis {most}",
  "erledigt",
  "gemessen",
  "Verschlissener Schlitten: die Zeile einstellen, in der der Maßstab beim Ankratzen stand, nichts zwischen zwei Zeilen; sonst ist es unberichtigt. ± zählt vom Ankratzen.",
  "Vor dem letzten Schnitt gemessen? Nur um den Rest weiter.",
  "Vor dem letzten Schnitt gemessen? Nur um den Rest weiter: wie gut das ist, sagt „Ergibt“.",
  "{distance} mit {wheel}, ± {within}",
  "{distance} mit {wheel}, ± {within}; angekratzt in Schritt {number}",
  "Maßstab beim Ankratzen",
  "sonst",
  "nach Maßstab",
  "bis sie zeigt",
  "und",
  "nach Messen",
  "einstechen bei, {number}",
  "weiter bis, {number}",
  "Beginn bei",
  "Anschlag bei",
  "einstechen bei",
  "jedes Mal bis",
  "hinein bis",
  "Bohrer {diameter}, bis {depth}",
  "Schruppen {number}",
  "noch einmal",
  "letzter Schnitt",
  "von Hand, Strom aus",
  "Drehzahl unbekannt",
  "nicht laufen lassen",
  "am Motor einzustellen",
  "so schnell, wie eine Hand vorschieben kann",
  "mit dem Riemen von Schritt {step}: für so wenig nicht umgelegt",
  "langsamer, als der Werkstoff vertrüge",
  "durch eine Grenze gehalten",
  "{wheel}, geklemmt, wo es steht: aufschreiben, was die Skala zeigt: {label} = __________, Umdrehung 0. Längen zählen von dieser Planfläche.",
  "{wheel}, geklemmt, wo es steht: anzeichnen, wo das Handrad steht; von dort zählen die Umdrehungen. Längen zählen von dieser Planfläche.",
  "{wheel}, geklemmt, wo es steht: Skalenring auf 0 stellen. Längen zählen von dieser Planfläche.",
  "Vor dem letzten Schnitt: {diameter} − gemessen ________ = Rest ________ {unit}",
  "Vor dem letzten Schnitt: gemessen ________ − {diameter} = Rest ________ {unit}",
  "Um den Rest weiter.",
  "Weiter um den Rest {times} = ________ {counted}.",
  "an der Skala ({unit})",
  "Umdrehungen",
  "Ebenso bei jedem weiteren Teil: der Meißel wird neu angekratzt.",
  "Die Skala beim richtigen Maß: ________ ; die weiteren Teile gehen ohne Zwischenmessung darauf.",
  "Nach dem letzten Schnitt noch einmal messen. Stimmt das Maß: was die Skala zeigt, weniger die Summe oben, ist ________ (auf das Vorzeichen achten); das zu jeder weiteren Summe dieses Meißels dazuzählen.",
  "Nach dem letzten Schnitt noch einmal messen. Stimmt das Maß, den Skalenring auf den Wert oben stellen ({reading}), ohne den Schlitten zu bewegen: jeder weitere Skalenwert dieses Meißels stimmt dann.",
  "Nach dem letzten Schnitt noch einmal messen. Stimmt das Maß, den Skalenring auf den Wert oben stellen ({reading}), ohne den Schlitten zu bewegen: jeder weitere Skalenwert dieses Meißels stimmt dann; die weiteren Teile gehen ohne Zwischenmessung direkt darauf.",
  "Nach dem letzten Schnitt noch einmal messen. Stimmt das Maß, den Skalenring auf den Wert der eigenen Zeile stellen, ohne den Schlitten zu bewegen: die eigenen Zeilen späterer Schritte stimmen dann für diesen Meißel, auf ihr ±.",
  "Nach dem letzten Schnitt noch einmal messen. Stimmt das Maß, den Skalenring auf den Wert oben stellen ({reading}), ohne den Schlitten zu bewegen: weitere Skalenwerte dieses Meißels zählen dann von einem wahren Maß. Nach längerem Weg auf dem verschlissenen Schlitten wieder messen.",
  "Die weiteren Teile gehen ohne Zwischenmessung direkt darauf.",
  "Erledigt an Teil",
  "Erledigt an Teil, {from} bis {to} auf einem weiteren Blatt",
  "Abgelehnt und nicht gezeichnet: {steps}. Was die anderen Schritte machen, ginge dabei verloren.",
  "Große Zahlen: was die Skala zeigt, und zwar die für diese Maschine gedruckte, aufgeklebt, bevor es losgeht.",
  "Umdr.: ganze, ab der Null.",
  "Umdr.: ab der Null.",
  "Sekunden beim Vorschub laut zählen: „einundzwanzig, zweiundzwanzig“.",
  "Wo „alte Skala“ steht: was die Skala zeigt, die auf dem Handrad sitzt; ihr Fehler ist eingerechnet, nach dem Weg je Umdrehung der Datei. Was das Ablesen hinzufügt, kommt zu jedem ± hinzu.",
  "Weiß auf schwarz: vor diesem Schritt den Riemen umlegen, {off}.",
  "Für mehrere Schritte",
  "Unter „{heading}“: {signs}.",
  "Schritt {inFile} der Datei",
  "Reihe {row}",
  "Umdr.",
  "Skala",
  "Vor dem ersten Span",
  "Dieser Auftrag ist abgelehnt und wurde trotzdem gedruckt; die erste Seite sagt, warum. Nicht danach arbeiten, bis das behoben ist.",
  "Dieser Auftrag ist abgelehnt und wurde trotzdem gedruckt ({steps}); die erste Seite sagt, warum. Nicht danach arbeiten, bis das behoben ist.",
  "Stange {diameter}",
  "Rohr {diameter} × {bore}",
  "{length} lang",
  "{out} herausstehend",
  "das Ende auf einer Spitze",
  "zwischen Spitzen",
  "Riemen wie auf der Riemenkarte: {key}.",
  "gegen einen Anschlag in der Spindel",
  "umgespannt gegen einen Anschlag in der Spindel",
  {"one":"{n} Teil","other":"{n} Teile"},
  "Der Schritt geht weiter: bis zum Ende lesen, bevor geschnitten wird.",
  {"one":"Schritt {steps}","other":"Schritte {steps}"},
  "Einige Schritte stehen in anderer Reihenfolge als in der Auftragsdatei: so wird der Riemen seltener umgelegt, sonst ändert sich nichts.",
  "Gegen diesen Auftrag spricht nichts, soweit die Dateien es sagen.",
  "Abgelehnt",
  "Achtung",
  "{count} Werkzeuge folgen einander im Stahlhalter ({tools}). Ein Werkzeug, das herausgenommen und wieder eingesetzt wird, wird neu angekratzt, außer sein Halter kommt genau an dieselbe Stelle zurück.",
  "Ein Werkzeug macht alles: solange es nicht bewegt wird, wird nichts neu angekratzt. Jedes Teil bekommt dieselben Skalenwerte.",
  "Was für {steps} geschwenkt und zurückgestellt wird, nimmt jede Null mit: für jedes Teil neu ankratzen; von einer Stange ist das nächste Teil nicht da, bevor das letzte abgestochen ist.",
  "Was für {steps} geschwenkt und zurückgestellt wird, nimmt jede Null mit: an allen Teilen in einem Zug machen, oder für jedes Teil neu ankratzen.",
  "Wo ein Werkzeug neu angekratzt wird, bei jedem Teil vor dem letzten Schnitt messen. Was seine Null behält, wird auf die Skalenwerte gestellt, die das erste Teil ergeben hat: das erste und das dritte messen, dann jedes zehnte.",
  "Vom zweiten Teil an wird kein Schnitt zwischendurch gemessen: auf die Skalenwerte stellen, die das erste Teil ergeben hat. Das erste und das dritte messen, dann jedes zehnte, und immer, wenn ein Werkzeug angefasst wurde.",
  "Nach Arbeitsgängen: jeder Schritt an allen Teilen, dann der nächste. Ein Futter nimmt ein Teil nie ganz rundlaufend wieder auf; Schritte, die zueinander laufen müssen, bleiben in einer Aufspannung.",
  "Stück für Stück bis zum Umspannen, an allen Teilen; dann Stück für Stück von dort: was in einer Aufspannung gedreht ist, läuft zueinander rund.",
  "Stück für Stück: jedes vom ersten Schritt bis zum letzten, damit seine Flächen zueinander rund laufen.",
  "{count} gleiche Teile",
  "Jedes Teil gegen dieselben Anschläge spannen.",
  "jedes steht etwas anders heraus: an jedem Teil das rohe Ende ankratzen und die Längsnull neu setzen",
  "Stange durch die Spindel: mit jedem Teil wird sie kürzer, ein Anschlag hinter ihr nützt nichts. Jedes Mal herausziehen, bis ihr Ende an einen Anschlag vor ihr kommt, der immer an derselben Stelle steht (im Reitstock, oder ein Klotz), und diesen wegnehmen. Ohne ihn gilt: {fresh}.",
  "Jeden Rohling gegen den Anschlag in der Spindel schieben und das Futter gleich schließen: die Längsnull gilt für alle Teile.",
  "Rohlinge ohne Anschlag in der Spindel: {fresh}, oder gegen einen Anschlag spannen.",
  "Umgespannt wird der Anschlag einmal neu gestellt; dann gilt auch diese Längsnull für alle Teile.",
  "Umgespannt gilt dasselbe für das andere Ende.",
  "Zwischen Spitzen liegt jedes Teil so tief, wie seine Zentrierbohrungen sind: an jedem Teil die Planfläche ankratzen und die Längsnull neu setzen, gleich welcher Anschlag da ist.",
  "Stück für Stück",
  "nach Arbeitsgängen",
  "ein Teil",
  "Arbeitsweise",
  "Riemenwechsel",
  "im Schnitt",
  "Minuten",
  "Handgriffe",
  "Werkzeuge,",
  "Spannen",
  "Riemen",
  "gesamt",
  "Riemen und Zeit",
  "Der Riemen bleibt vom ersten Schritt bis zum letzten liegen.",
  {"one":"{n} Riemenwechsel vom ersten Schritt bis zum letzten: eine Hand unter der Abdeckung, {off}.","other":"{n} Riemenwechsel vom ersten Schritt bis zum letzten; jeder ist eine Hand unter der Abdeckung, {off}."},
  "Gerechnet mit dem kleinsten veröffentlichten Vorschub bei den Drehzahlen oben und mit eigenen Zahlen für Handgriffe ohne Eile: {belt} Minuten je Riemenwechsel, {tool} je Werkzeug eingestellt und angekratzt, {part} je Teil gespannt, {pass} je Schnitt, {measure} je Messung.",
  "Jedes nächste Loch von mehreren: {hole} mehr.",
  {"one":"{n} Schritt ohne Vorschub oder Drehzahl ist nicht mitgezählt.","other":"{n} Schritte ohne Vorschub oder Drehzahl sind nicht mitgezählt."},
  "Das erste Teil dauert länger; ein Versuch sagt es besser.",
  {"one":"Langsamer ist erlaubt: {steps} auch auf {position} ({rpm} U/min) kostet je Teil {more} mehr im Schnitt und spart {n} Riemenwechsel.","other":"Langsamer ist erlaubt: {steps} auch auf {position} ({rpm} U/min) kostet je Teil {more} mehr im Schnitt und spart {n} Riemenwechsel."},
  {"one":"Langsamer ist erlaubt: {steps} auch auf {position} ({rpm} U/min) kostet je Teil {more} mehr im Schnitt und spart {n} Riemenwechsel, insgesamt weniger Zeit, wenn Stück für Stück gearbeitet wird.","other":"Langsamer ist erlaubt: {steps} auch auf {position} ({rpm} U/min) kostet je Teil {more} mehr im Schnitt und spart {n} Riemenwechsel, insgesamt weniger Zeit, wenn Stück für Stück gearbeitet wird."},
  {"one":"Langsamer ist erlaubt: {steps} auch auf {position} ({rpm} U/min) kostet je Teil {more} mehr im Schnitt und spart {n} Riemenwechsel, aber keine Zeit.","other":"Langsamer ist erlaubt: {steps} auch auf {position} ({rpm} U/min) kostet je Teil {more} mehr im Schnitt und spart {n} Riemenwechsel, aber keine Zeit."},
  "Teil",
  "Gemessen",
  "Gemessen, Teile 1 bis {last}; die anderen auf einem weiteren Blatt",
  {"one":"{n} Loch","other":"{n} Löcher"},
  {"one":"Loch „{name}“","other":"{n} Löcher „{name}“"},
  "von {from} bis {to}",
  "durch",
  "{depth} tief",
  "von {from} bis {to}",
  "{size}, {width} breit",
  "bei {at}",
  "ø{large} auf ø{small}",
  "Rändelung {pitch}",
  "Zentrierung ø{pilot}",
  "und {count} weitere: siehe die Schritte",
  "plangedreht",
  "auf Länge {length} plangedreht",
  "abgestochen bei {length}",
  "am anderen Ende",
  "{length} lang im Ganzen",
  "{length} vom freien Ende",
  "{length} vom anderen Ende",
  "Maßstab {ratio}",
  "Maßstab {ratio}, alle Maße in mm",
  "Maßstab {ratio}, alle Maße in Zoll",
  "Ab dem zweiten Teil zuerst zurück auf {position}, {off}: das Teil davor endete auf {last}.",
  "{material} nicht feilen oder polieren; eine gröbere Toleranz erfragen oder eine andere Maschine nehmen",
  "von Hand fertig bearbeiten",
  "was eine {firmness} Maschine üblicherweise verträgt, Werkstattbrauch",
  "leichte",
  "kräftige",
  "eine Stange, von der abgestochen wird, wird mit jedem Teil kürzer und reicht nicht an einen Anschlag in der Spindel: er wird nicht gerechnet",
  "die Stange gegen einen Anschlag vor ihrem Ende herausziehen, oder Rohlinge sägen und ihre Länge angeben",
  "arbeitet nach Arbeitsgängen an einer Stange durch die Spindel: das zweite Teil ist nicht da, bevor das erste abgestochen ist",
  "Rohlinge sägen und ihre Länge angeben, oder ein Teil nach dem anderen machen",
  "kommt nach dem Abstechen: nichts hält das Teil",
  "es vor diesem Schritt umdrehen und neu spannen, oder zuletzt abstechen",
  "spannt eine Stange um, deren Länge nicht bekannt ist",
  "vorher abstechen, oder die Länge des Rohlings angeben",
  "lässt {out} herausstehen von einem Werkstück, das nur {long} lang ist: in den Backen ist nichts",
  "weniger herausstehen lassen",
  "die Backen schlössen auf {diameter} nur über {length}, und {thicker} liegt dahinter: sie halten nicht oder gehen nicht darüber",
  "mehr herausstehen lassen, oder das andere Ende spannen",
  "{out} herausstehen lassen: dort schließen die Backen auf {diameter} über {length}; oder das andere Ende spannen",
  "die Backen schließen auf {diameter} über {length}, und {thicker} folgt dahinter",
  "darauf achten, dass ihre inneren Enden vom dickeren Teil frei bleiben",
  "die Backen halten nur {length} von Durchmesser {diameter}: es fliegt beim ersten Schnitt heraus",
  "weniger herausstehen lassen, oder das andere Ende spannen",
  "die Backen halten {length}, und {out} steht heraus",
  "die Backen halten einen Kegel bei {diameter} und berühren ihn nur an einer Kante",
  "die Backen halten nur {length} von Durchmesser {diameter}; {least} ist das Mindeste",
  "weniger herausstehen lassen, das Ende abstützen, oder leichte Schnitte nehmen",
  "die Backen drücken auf eine Wand von {wall} um die Bohrung von {bore}: sie federt, und die Bohrung wird unrund",
  "leicht spannen, die Bohrung mit einem Stopfen stützen, oder sie erst danach fertig ausdrehen",
  "die Backen lägen auf dem Gewinde {thread}",
  "die Backen lägen auf der Rändelung",
  "anderswo spannen, oder in einer geschlitzten Hülse",
  "reicht bis {to} am Werkstück, und die Backen beginnen bei {at}: der Meißel läuft hinein",
  "reicht bis {to} am Werkstück, und die Backen beginnen bei {at}: weniger als {clear} Abstand",
  "reicht bis {to} am Werkstück, und der Mitnehmer beginnt bei {at}: der Meißel läuft hinein",
  "reicht bis {to} am Werkstück, und der Mitnehmer beginnt bei {at}: weniger als {clear} Abstand",
  "{more} mehr herausstehen lassen, oder den Schritt kürzen",
  "vorher machen, ehe die Spitze anliegt",
  "braucht das freie Ende, wo die Spitze ist",
  "sticht ein Werkstück ab, das eine Spitze hält: es klemmt den Stechmeißel",
  "dafür nur im Futter spannen",
  "dreht das Ende auf {size}, und die Zentrierbohrung ist {hole} weit: der Meißel trifft die Spitze",
  "einen kleineren Zentrierbohrer nehmen, oder das Ende zuletzt ohne Spitze drehen",
  "dreht das Ende auf {size} neben einer Zentrierbohrung von {hole}: kaum Platz für den Meißel",
  "eine halbe Spitze und einen schlanken Seitenmeißel nehmen, oder einen kleineren Zentrierbohrer",
  "wird von einer Spitze in einer zylindrischen Bohrung gehalten: sie trägt auf einer Kante, wenn sie überhaupt breit genug ist",
  "die Bohrung mit einem Stopfen schließen, oder die Spitze anstellen, ehe sie gebohrt wird",
  "wird von einer Spitze gehalten, und kein Schritt macht die Zentrierbohrung am anderen Ende",
  "wird von einer Spitze gehalten, und kein Schritt macht die Zentrierbohrung am freien Ende",
  "wird zwischen Spitzen gehalten, und kein Schritt macht eine Zentrierbohrung",
  "zentrieren, solange nur das Futter hält, oder darauf achten, dass die Stange eine Zentrierbohrung hat",
  "verstellt den Reitstock, und nur das Futter hält das Werkstück: nichts wird schräg",
  "verstellt den Reitstock, und das Futter hält das andere Ende gerade: das Werkstück biegt sich",
  "vorher zwischen Spitzen spannen, oder stattdessen den Oberschlitten schwenken",
  "schwenkt den Spindelstock von der Spitze weg, die das Werkstück hält",
  "nur im Futter spannen, oder stattdessen den Oberschlitten schwenken",
  "{least} bis {most}",
  "mehr als das {times}-Fache schlägt und steigt über den Meißel",
  "mehr als das {times}-Fache biegt sich und rattert",
  "{why}: es braucht eine Lünette oder ein dickeres Teil",
  "{why}: weniger herausstehen lassen, das Ende mit einer Spitze halten, oder das dünne Ende zuerst und kurz drehen",
  "{why}: weniger herausstehen lassen und danach bis zu einer Spitze herausziehen",
  "sticht {distance} vor den Backen ab, wo das Werkstück nachgibt und den Stechmeißel klemmt",
  "weniger herausstehen lassen: dicht an den Backen ist am besten",
  "braucht {travel} von {wheel}, mit einem Weg von {has}",
  "auf halbem Weg zurückziehen, Reitstock oder Tisch um ebenso viel nachstellen, und von diesem Skalenwert weiterzählen",
  "kürzer oder flacher machen, oder in zwei Aufspannungen",
  "kein Handrad mit bekanntem Weg je Umdrehung gibt diese Zustellung: Skalenwerte lassen sich nicht angeben",
  "seine Ablesungen berichtigen, oder sie neu nehmen",
  "den Weg je Umdrehung dieses Handrads messen, oder in der Maschinendatei sagen, welches Handrad quer verstellt",
  "den Weg je Umdrehung des Handrads für längs messen, oder in der Maschinendatei sagen, welches es ist",
  "bräuchte mehr als {most} Schnitte von {cut}",
  "tiefere Schnitte nehmen, oder von Material ausgehen, das näher am Maß ist",
  "eine Toleranz von insgesamt {tolerance} ist feiner, als die Skala allein hergibt, etwa {gives}",
  "in einem Zug zugestellt lassen Ankratzen und Vorschubweg allein ± {doubt} offen, was das Ablesen am Rad hinzufügt, ist nicht bekannt, und die Toleranz lässt ± {margin} zu",
  "um die Hälfte des Restes zustellen und dazwischen messen",
  "eine Toleranz von insgesamt {tolerance} ist feiner, als dieser Schlitten zu einem Skalenwert zurückkommt, etwa {holds} (seine gemessene Streuung und die auf ein Zehntel abgelesene Skala; Verschleiß nicht gezählt)",
  "vor dem letzten Schnitt einmal gemessen ergibt es ± {doubt}, und die Toleranz lässt ± {margin} zu",
  "Messzeug und Skala allein lassen ± {doubt} offen, das ± des Wegs je Umdrehung ist nicht bekannt, und die Toleranz lässt ± {margin} zu",
  "Messzeug und Schlitten allein lassen ± {doubt} offen, was das Ablesen der alten Skala hinzufügt, ist nicht bekannt, und die Toleranz lässt ± {margin} zu",
  "es gibt keine Skala, nach der man gehen könnte; Messzeug und Schlitten allein lassen ± {doubt} offen, und die Toleranz lässt ± {margin} zu",
  "der Schlitten ist verschlissen, und es gibt keine Skala, nach der man gehen könnte; Messzeug und Schlitten allein lassen ± {doubt} offen, und die Toleranz lässt ± {margin} zu",
  "messen und berichtigen: {doubt} im Durchmesser stehen lassen, noch einmal messen und abnehmen, was übrig ist",
  "{diameter} ist größer, als die Maschine schafft, höchstens {limit}",
  "nicht bohren; ausdrehen, oder auf eine andere Maschine nehmen",
  "ein einfacher Rändelhalter drückt stärker, als Schlitten und Lager einer leichten Maschine vertragen",
  "eine Rändelzange nehmen, oder die Maschine in ihrer Datei kräftig nennen, wo es erprobt ist",
  "schwenkt den Spindelstock, und die Maschinendatei kennt keinen schwenkbaren",
  "stattdessen den Oberschlitten schwenken; oder, wo der Spindelstock doch schwenkt, seine Skala in der Maschinendatei angeben",
  "ein Stechmeißel von {blade} ist breit für diese Maschine (höchstens etwa {most}, Werkstattbrauch): er rattert und hakt ein",
  "einen schmaleren nehmen und eine breite Nut in mehreren Einstichen schneiden",
  "die Maschinendatei hat keinen Antrieb: jede Drehzahl ist selbst zu wählen",
  "mit der langsamsten anfangen",
  "für {material} mit {tool} ist keine Schnittgeschwindigkeit bekannt",
  "eine eigene in der Maschinendatei angeben",
  "selbst die langsamste Stellung, {rpm} U/min, ist schneller, als so einer Maschine bei {diameter} gegeben wird, aber nicht schneller als veröffentlicht",
  "scharfer Meißel, leichte Schnitte, reichlich schmieren; anhalten, wenn es rattert oder die Schneide blau anläuft",
  "in jeder Stellung würde die Hand {material} zu fein vorschieben, und feine Späne brennen",
  "nicht laufen lassen",
  "selbst die langsamste Stellung, {slowest} U/min, ist zu schnell: {diameter} verträgt höchstens {most} U/min",
  "selbst die langsamste Stellung, {slowest} U/min, ist zu schnell: Rändeln verträgt höchstens {most} U/min",
  "selbst die langsamste Stellung, {slowest} U/min, ist zu schnell: höchstens {most} U/min sind erlaubt",
  "jede Stellung, die für {diameter} langsam genug ist ({most} U/min), kann über {held} von {limit} U/min laufen",
  "die Grenze des Futters",
  "die Grenze der Spindel",
  "nicht laufen lassen: bei stehender Maschine absägen, umspannen und plandrehen",
  "die Spindel von Hand drehen, oder eine eigene erprobte Schnittgeschwindigkeit in der Maschinendatei angeben",
  "die Kante bei stehendem Werkstück mit der Feile brechen, oder einen kleineren Durchmesser nehmen",
  "nicht laufen lassen: kleinerer Durchmesser, langsamerer Antrieb, oder eine andere Maschine",
  "schneidet nichts: vor dieser Planfläche steht kein Werkstoff",
  "schneidet nichts: das Loch dort hat schon {size}",
  "schneidet nichts: das Werkstück hat dort schon {size}",
  "auf Reihenfolge der Schritte, Anfang und Maße achten",
  "beginnt bei {said}, aber das Werkstück hat dort noch {there}: der erste Schnitt würde zu tief",
  "von dem ausgehen, was dort steht, oder auf die Reihenfolge der Schritte achten",
  "beginnt bei {said}, aber das Werkstück hat dort nur {there}",
  "die Schnitte werden nach dem geplant, was dort steht",
  "braucht {large} am dicken Ende, und das Werkstück hat dort {there}",
  "braucht {large} am dicken Ende, und dort ist kein Werkstück",
  "kürzen, oder dort beginnen, wo Werkstoff ist",
  "bei {at} ist kein Werkstoff",
  "Längen zählen von der fertigen Planfläche des freien Endes",
  "ein Rändelrad von {wheel} Breite zeichnet mehr als {length}",
  "ein schmaleres Rändelrad nehmen, oder die Rändelung so breit machen",
  "läuft über mehr als einen Durchmesser",
  "nur einen Zylinder rändeln",
  "gibt {said} am Stechmeißel an, und das Werkstück hat dort {there}",
  "der Plan geht nach dem, was dort steht",
  "dreht auf Länge plan, und die Länge der Stange ist nicht angegeben",
  "stattdessen angeben, wie viel abkommt, oder die Länge des Rohlings",
  "beginnt bei {at} hinter {collar}: dort muss der Meißel einstechen, was ein Seitenmeißel nicht tut",
  "dort vorher einen Einstich drehen, oder einen spitzen Meißel mit leichten Schnitten nehmen",
  "kommt hinten heraus: die Spitze geht bis {to}, und das Werkstück ist {long} lang",
  "den Anschlag in der Spindel vom Bohrer fernhalten, oder hohl machen",
  "darauf achten, dass nichts dahinter steht, und am Ende den Vorschub zurücknehmen",
  "das Loch hat {hole}",
  "es wurde keines gemacht",
  "bohrt {size} in ein Werkstück von {work}",
  "einen kleineren Bohrer nehmen, oder bohren, ehe außen gedreht wird",
  "beginnt auf einer ebenen Fläche, wo ein Bohrer verläuft",
  "vorher zentrieren",
  "dreht {size} in einem Werkstück von {work} aus",
  "weniger ausdrehen, oder ehe außen gedreht wird",
  "dreht aus, wo kein Loch gemacht wurde",
  "dreht {depth} tief aus, und das Loch ist nicht so tief",
  "vorher bohren, auf volle Tiefe und etwas mehr",
  "beginnt in einem Loch von {said}, und es hat {there}",
  "dreht {depth} tief in einem Loch von {hole} aus: ein so langer Bohrmeißel federt",
  "leichte Schnitte nehmen und oft messen, oder bohren und reiben",
  "braucht ein Loch etwas unter {size}; {found}",
  "braucht über die ganze Tiefe ein Loch etwas unter {size}; {found}",
  "es ist nicht so tief",
  "vorher bohren, etwas kleiner und tiefer",
  "lässt {room} Loch unter der geriebenen Tiefe, wo der Anschnitt der Reibahle endet",
  "{more} tiefer bohren, oder weniger tief reiben",
  "nimmt {off} von einem Loch mit {hole}, mehr als eine Reibahle verträgt (etwa {most})",
  "auf {size} oder etwas mehr bohren oder ausdrehen",
  "senkt ein Loch an, das nicht gemacht wurde",
  "vorher bohren, oder darauf achten, wo die Kante liegt",
  "bei {at} ist keine Kante",
  "die Lage der Kante zählt vom freien Ende; 0 ist das Ende selbst",
  "nimmt {size} von einer Kante, die nur {height} hoch steht",
  "auf {height} oder weniger verkleinern",
  "geht {deep} tief mit einem Stechmeißel von {blade} Breite, mehr als das {times}-Fache: er verläuft und bricht",
  "einen Stechmeißel von {blade} oder breiter nehmen, oder die Stelle vorher abdrehen",
  "schneidet {cut} tief; diese Maschine verträgt {most} ({why})",
  "höchstens {most} tief schneiden, oder in der Maschinendatei mehr zulassen, wo es erprobt ist",
  "lässt {finish} für den letzten Schnitt: der Meißel schabt, statt zu schneiden",
  "dafür {least} oder mehr lassen",
  "bricht bei {at} am Werkstück durch die Wand",
  "lässt bei {at} am Werkstück eine Wand von {wall}",
  "auf beide Durchmesser achten: weniger als {least} hält den Schnitt nicht aus",
  "zuletzt leichte Schnitte, und bedenken, dass die Backen es unrund drücken",
  "schneidet {depth} tief Gewinde, und das Loch ist nicht so tief",
  "das Gewinde {name}",
  "die Rändelung",
  "{made} aus einem früheren Schritt geht dabei verloren",
  "zuerst dieser Schnitt, dann {made}; oder kleiner, oder kürzer",
  "braucht ein Loch von {least} (volles Gewinde) bis unter {most}; es wurde keines gemacht",
  "vorher bohren, auf Kernlochmaß und tiefer als das Gewinde",
  "braucht ein Loch von {least} (volles Gewinde) bis unter {most}; das letzte hat {hole}",
  "{hole} oder nahe dabei bohren: das Gewindeblatt nennt den Bohrer",
  "{hole} oder nahe dabei bohren, für {share} %",
  "das Loch von {hole} gibt {share} % des vollen Gewindes: ein Handgewindebohrer kann darin brechen",
  {"one":"geht in {count} Löcher, und bis hierher gibt es {n}","other":"geht in {count} Löcher, und bis hierher gibt es {n}"},
  "die anderen zuerst beginnen, oder neu zählen",
  "das Loch von {hole} gibt {share} % des vollen Gewindes: es reißt leicht aus",
  "das Gewinde ist so groß wie das Werkstück dort, {size}",
  "lässt {wall} Wand um das Gewinde: sie reißt",
  "ein kleineres Gewinde nehmen, oder schneiden, ehe außen abgedreht wird",
  "lässt {room} Loch unter {depth} Gewinde: schon der Anschnitt braucht {lead}, und der Gewindebohrer bricht am Grund",
  "mit vollem Durchmesser {depth} tief bohren, oder weniger tief Gewinde schneiden",
  "lässt {room} Loch unter {depth} Gewinde; {source} verlangt {asks}",
  "mit vollem Durchmesser {depth} tief bohren, oder mit dem Fertigschneider nachschneiden und seine Umdrehungen zählen",
  "braucht auf {length} einen Bolzen von etwa {rod}; das Werkstück hat {work}",
  "vorher auf {rod} drehen",
  "lässt {wall} Wand zwischen Gewindegrund und Bohrung von {bore}: sie gibt nach",
  "das Gewinde schneiden, ehe gebohrt wird, oder ein kleineres Loch nehmen",
  "{before} vor dem Absatz enden lassen, oder dort einen Freistich drehen, {width} breit auf {floor}, nach {source}",
  "endet {room} vor einem Absatz: der Anschnitt des Schneideisens lässt etwa {lead} unfertig, also läuft es gegen den Absatz",
  "endet {room} vor einem Absatz",
  "{remedy}; oder für die letzten Umdrehungen das Schneideisen wenden",
  "{length} stehen heraus bei Durchmesser {diameter}, {ratio}-mal so lang wie dick, am freien Ende durch nichts gehalten",
  "{length} sind frei zwischen dem, was hält, bei Durchmesser {diameter}, {ratio}-mal so lang wie dick",
  "{length} stehen heraus bei Durchmesser {diameter}, so steif wie eine Stange {ratio}-mal so lang wie dick, am freien Ende durch nichts gehalten",
  "{length} sind frei zwischen dem, was hält, bei Durchmesser {diameter}, so steif wie eine Stange {ratio}-mal so lang wie dick",
  "Diesen Skalenring hat niemand geprüft. Frag, bevor du dich auf ihn verlässt.",
  "Das läuft nicht gleichmäßig: es kann um {most} danebenliegen. Miss das Teil.",
  "Die Anzeige kann auf {travel} um {most} falsch sein. Miss das Teil nach.",
  "Nie den Schlüssel im Futter stecken lassen.",
  "Nie Handschuhe, Ringe oder lose Ärmel tragen.",
  "Nie lange Haare hängen lassen. Binde sie zurück.",
  "Nie ohne Schutzbrille arbeiten.",
  "Nie Späne anfassen. Sie schneiden und brennen. Nimm den Pinsel.",
  "Nie messen, während es sich dreht.",
  "Nie den Riemen umlegen, solange der Stecker steckt.",
  "Nie den Riemen umlegen, solange ein Fuß auf dem Tritt steht.",
  "Nie den Riemen umlegen, solange eine Hand an der Kurbel ist.",
  "Nie schneller laufen lassen, als das Futter erlaubt.",
  "Nie Gussstaub einatmen. Aufwischen, nicht blasen.",
  "Nie eine lange Stange herausstehen lassen. Sie biegt sich und schlägt.",
  "Nie das Werkstück in der Hand halten. Spann es.",
  "Schalte aus. Warte, bis alles steht.",
  "Zieh den Stecker.",
  "Nimm den Fuß vom Tritt. Warte, bis alles steht.",
  "Nimm die Hand von der Kurbel. Warte, bis alles steht.",
  "Öffne die Abdeckung.",
  "Leg den Riemen auf die Stufe, die du brauchst.",
  "Dreh das Futter einmal von Hand. Zieh den Schlüssel ab.",
  "Schließ die Abdeckung. Dann steck den Stecker ein.",
  "Schließ die Abdeckung. Dann erst den Fuß auf den Tritt.",
  "Schließ die Abdeckung. Dann erst die Hand an die Kurbel.",
  "Gewindespindeln und Zahnräder haben Spiel.",
  "Was den Bohrer bewegt, hat Spiel.",
  "Drehst du zurück, wartet der Schlitten.",
  "Drehst du zurück, wartet der Bohrer.",
  "Dieses Warten ist das Umkehrspiel.",
  "Komm immer von derselben Seite an einen Strich.",
  "Zu weit? Dreh eine halbe Umdrehung zurück. Komm neu heran.",
  "Zu weit? Dreh etwas weiter zurück als das Umkehrspiel. Komm neu heran.",
  "Frag, bevor du anfängst. Frag, wenn ein Geräusch neu ist. Frag, wenn du nicht sicher bist.",
  "Dein Ausbilder, die Betriebsanleitung und die Regeln dieser Werkstatt gehen diesem Blatt vor.",
  "Um wie viel wird das Teil dünner?",
  "Wie lang ist der Weg?",
  "Dreh das Handrad „{wheel}“ eine halbe Umdrehung. {moved}",
  {"one":"Dreh das Handrad „{wheel}“ {n} ganze Umdrehung. {moved}","other":"Dreh das Handrad „{wheel}“ {n} ganze Umdrehungen. {moved}"},
  "Du fängst bei 0 an und drehst bis zum Pfeil. Wie viel ist das in mm?",
  "Du fängst bei 0 an und drehst bis zum Pfeil. Wie viel ist das in Zoll?",
  "Du fängst bei 0 an und drehst bis zum Pfeil. Wie viel ist das in mm im Durchmesser?",
  "Du fängst bei 0 an und drehst bis zum Pfeil. Wie viel ist das in Zoll im Durchmesser?",
  {"one":"{n} Teilstrich: {distance}","other":"{n} Teilstriche: {distance}"},
  "Du willst {distance} an der Skala. Wie viele Umdrehungen? Was zeigt die Skala dann?",
  "Du willst {distance} an der Skala. Wie viele Umdrehungen? Was zeigt die Skala dann, und in welcher Reihe?",
  "Das Teil misst {measured}. Du willst {wanted}. Wie viele Teilstriche noch?",
  "Das Teil misst {measured}. Du willst {wanted}. Wie viele Teilstriche noch? Denk daran: beide Seiten werden dünner.",
  {"one":"{n} Teilstrich","other":"{n} Teilstriche"},
  "Du bist {lines} Teilstriche zu weit. Was tust du?",
  "Eine halbe Umdrehung zurück, dann neu an den richtigen Strich.",
  "Etwas weiter zurück als das Umkehrspiel, dann neu an den richtigen Strich.",
  "zeigt die Skala {figure}",
  "zeigt Reihe {row}: {figure}",
  "Keine ganze Umdrehung: dann {says}",
  {"one":"{n} Umdrehung, dann {says}","other":"{n} Umdrehungen, dann {says}"},
  "{turned}; der nächste Strich ist {line}",
  "Du kratzt an, und die Skala steht auf 0. {question}",
  "Ein Absatz ist {length} lang. Wie drehst du das Handrad „{wheel}“?",
  "Der Bohrer hakt ein und das Teil dreht sich mit. Was wurde vergessen? Was tust du?",
  "Das Spannen. Ausschalten. Nie nach dem Teil greifen.",
  {"one":"{n} Umdrehung","other":"{n} Umdrehungen"},
  {"one":"{n} Achtel","other":"{n} Achtel"},
  "{turns} und {eighths}",
  "{turned}: {left} zu tief",
  "{turned}: {left} zu wenig",
  "Ein Loch soll {depth} tief werden. Wie drehst du das Handrad „{wheel}“?",
  "Ein Loch soll {depth} tief werden. Wie weit drehst du das Handrad „{wheel}“, in Achteln einer Umdrehung?",
  "Werkstoff: {material}. Der Bohrer hat {size}. Wohin kommt der Riemen?",
  "Werkstoff: {material}. Das Teil ist {size} dick. Wohin kommt der Riemen?",
  "{position}, {rpm} U/min",
  "Nirgends: keine Drehzahl bekannt. Frag.",
  "Nirgends: zu schnell. Frag.",
  "Schneide ein Gewinde {thread}, {depth} tief, von Hand. Es hat {perInch} Gänge auf den Zoll. Wie viele Umdrehungen?",
  "Schneide ein Gewinde {thread}, {depth} mm tief, von Hand. Eine Umdrehung geht {pitch} mm hinein. Wie viele Umdrehungen?",
  "5  Nie",
  "6  Frag",
  "1  Skala ablesen",
  "2  Von einer Seite kommen",
  "3  Riemen umlegen",
  "4  Drehzahl wählen",
  "Ich frage:",
  "Name:",
  "Frag, wie weit eine Umdrehung fährt.",
  "Probier es",
  "Rechne aus. Schreib die Antwort auf die Linie. Es sind Zahlen dieser Maschine.",
  "Die Skala zeigt, um wie viel das Teil dünner wird.",
  "Kratz das Teil an. Stell die Skala auf 0. Dann zähle.",
  "Kratz das Teil an. Schreib auf, was die Skala zeigt. Zähle von dort weiter.",
  "erst Stecker ziehen",
  "Dieses Blatt kennt keine Drehzahlen. Frag, bevor du anfängst.",
  "Such die Stellung des Riemens:",
  "Antworten",
  "Eine Umdrehung am Handrad „{wheel}“ sind {distance}.",
  "Eine Umdrehung am Handrad „{wheel}“ sind {distance} an der Skala.",
  "Das Handrad „{wheel}“ hat keine Skala. Zähl die Umdrehungen.",
  "Von Strich zu Strich: {division}.",
  "Die Skala zeigt, wie weit der Schlitten fährt.",
  "Die Skala zeigt, wie tief der Bohrer geht.",
  "Die Skala zeigt, wie weit der Schlitten fährt. Ein rundes Teil wird um das Doppelte dünner.",
  "Sie hat {rows} Reihen. Nimm nach jeder Umdrehung die nächste Reihe.",
  "Hier verliert das Handrad „{wheel}“ etwa {much}.",
  {"one":"Hier verliert das Handrad „{wheel}“ etwa {much} an der Skala: {n} Strich.","other":"Hier verliert das Handrad „{wheel}“ etwa {much} an der Skala: {n} Striche."},
  "langsamste: {position}",
  "fragen",
  "Werkstoff",
  "Wie groß ist der Bohrer? Woraus ist das Teil?",
  "Wie dick ist das Teil? Woraus ist es?",
  "Keine Drehzahl ist bekannt. Frag.",
  "Nicht sicher? Nimm die langsamere.",
  "zu weit",
  "halbe Umdrehung zurück",
  "etwas zurück",
  "wieder heran: richtig",
  "Teilstriche von 0 an zählen; {counted}",
  "Zahlen in mm",
  "Zahlen in Zoll",
  {"one":"{n} Teilstrich = {value}","other":"{n} Teilstriche = {value}"},
  "Ein Absatz ist {length} lang. Wie weit drehst du das Handrad „{wheel}“, in Achteln einer Umdrehung?",
  "{turned}: {left} zu weit",
  "1  Umdrehungen zählen",
  "Eine Umdrehung am Handrad „{wheel}“ macht das Teil {distance} dünner.",
  "Verlass dich nicht auf die alte Skala am Handrad „{wheel}“ allein. Zähl die Umdrehungen, oder stell sie nur auf einen Wert, den ein Plan oder das Blatt der Anschläge für sie angibt.",
  "Komm immer von derselben Seite heran.",
  "hin",
  "zurück",
  "Schlitten",
  "Pinole",
  "abwärts",
  "steht fest",
  "Umkehrspiel",
  "{off}. Schlitten nachstellen und ölen; die anderen klemmen.",
  "{off}. Tisch und Säule klemmen; Pinole nachstellen und ölen.",
  "Umkehrspiel wegdrehen: vom Ende des Wegs aus {enough} oder mehr vor.",
  "Umkehrspiel aufheben: die Pinole von ganz oben {enough} oder mehr nach unten bewegen.",
  "Skala auf ihren Strich, Messuhr auf 0; Schlitten und Führung anreißen. Messuhr kürzer als {travel}: mit Endmaßen versetzen.",
  "Rad auf seinen Strich, Messuhr auf 0; die Pinole am Rand des Bohrkopfs anreißen. Messuhr kürzer als {travel}: mit Endmaßen versetzen.",
  "Noch keine Skala? Einen Papierstreifen einmal um den Radkranz legen, am Stoß abschneiden, in {parts} falten und aufkleben: die Falze sind die Striche.",
  "Nur in einer Richtung: an jedem Strich ablesen. Zu weit? Eine ganze Umdrehung zurück, neu anfahren.",
  "Nur in einer Richtung: an jedem Strich ablesen. Zu weit? {enough} oder mehr zurück, neu anfahren.",
  "Nach dem letzten Strich {enough} oder mehr darüber hinaus.",
  "Zurück: an denselben Strichen ablesen, von der untersten Zeile nach oben.",
  "Über null hinaus, dann noch einmal als Lauf 2: er zeigt, ob es sich wiederholt.",
  "Handrad:",
  "Eine Umdrehung {turn}.",
  "Weg {travel}, Messuhr {gauge}.",
  "{length} (angenommen)",
  "Angenommenes in der Datei berichtigen und neu drucken.",
  "Die Datei nennt noch keinen Weg je Umdrehung.",
  "In der Datei, wie angegeben: {turn} je Umdrehung.",
  "In der Datei, nach der Steigung der Gewindespindel: {turn} je Umdrehung.",
  "In der Datei, nach Zahnstange und Ritzel: {turn} je Umdrehung.",
  {"one":"In der Datei, aus {n} Ablesung: {turn} je Umdrehung.","other":"In der Datei, aus {n} Ablesungen: {turn} je Umdrehung."},
  {"one":"In der Datei, aus {n} Ablesung vom {day}: {turn} je Umdrehung.","other":"In der Datei, aus {n} Ablesungen vom {day}: {turn} je Umdrehung."},
  "Umkehrspiel {lost}.",
  "Datum",
  "Gemessen von",
  "Raum",
  "Messuhr",
  "Ablesung auf",
  "Fehlergrenze",
  "Anriss",
  "Strich an der Pinole",
  "Umdr.",
  "etwa",
  "Lauf {run}",
  "Der Skalenring",
  "Trommel Ø",
  "Breite",
  "außen Ø",
  "innen Ø",
  "großer Ø",
  "kleiner Ø",
  "Wie wachsen die Zahlen? Vom Griff aus sehen und ankreuzen:",
  "In der Datei: {sizes}.",
  "in Datei",
  "In die Datei, so wie es hier steht; für „…“ das Gemessene:",
  {"one":"Warum so viele: {places} Stellen, eine je Umdrehung, {runs} Läufe.","other":"Warum so viele: {places} Stellen, eine je {n} Umdrehungen, {runs} Läufe."},
  "{over} stimmen dann auf ± {doubt}, in 95 von 100 Fällen (gewünscht: ± {within}).",
  "Selbst so stimmen {over} nur auf ± {doubt}, in 95 von 100 Fällen (gewünscht: ± {within}): dazu gehört eine feinere Messuhr.",
  "Selbst so stimmen {over} nur auf ± {doubt}, in 95 von 100 Fällen (gewünscht: ± {within}): das ist Verschleiß, den keine feinere Messuhr und keine weiteren Ablesungen wegnehmen. Neue Ablesungen zeigen, wo er liegt.",
  "Verschleiß, der eine Länge um {depth} verfälscht, zeigt sich in 80 von 100 Fällen.",
  "So wenige Stellen zeigen nie eine verschlissene Strecke.",
  "Eine Ablesung streut wie die in der Datei.",
  "Angenommen ist, dass eine Ablesung um einen halben Skalenteil streut.",
  "Ganze Umdrehungen: immer derselbe Strich an der Ablesemarke, so täuscht kein unrunder Ring.",
  "Eine Umdrehung geht so weit, dass Teile davon abgelesen werden.",
  "Die Enden des Wegs bleiben frei, um das Umkehrspiel wegzudrehen.",
  "Die Messuhr reicht nicht über den ganzen Weg: was darüber liegt, bleibt ungeprüft.",
  "Mehr Läufe zeigen nur, wie gut sich die Ablesungen wiederholen.",
  "Riemenscheiben, Achsabstände und Drehzahlen",
  "Motor in der Datei: {rpm} U/min.",
  "Riemen in der Datei: {belt}.",
  "Rundriemen",
  "Keilriemen",
  "Flachriemen",
  "Zahnriemen",
  "Futter in der Datei: {rpm} U/min.",
  "Drehzahlmesser",
  "Aufschrift des Futters",
  "Motor, laut Schild",
  "Netz",
  "Riemen: rund, flach, Keil- oder Zahnriemen, und seine Größe",
  "U/min",
  "{off}, bevor eine Hand an Riemen oder Scheibe geht.",
  "Jede Scheibe auf eine der vier Arten messen und aufschreiben, auf welche: beim Rundriemen über dem Riemen, eine Zahnscheibe nach ihren Zähnen.",
  "Von Welle zu Welle, der Riemen so straff, wie er läuft.",
  "Abdeckungen schließen. Nichts ins Futter, was es nicht festhält. Riemen warmlaufen lassen, den Drehzahlmesser mit gestrecktem Arm auf die Marke richten, nichts berühren, was sich dreht; jede Stellung zweimal ablesen, ohne Last.",
  "treibend",
  "getrieben",
  "neu",
  "Trieb",
  "Abstand",
  "Stufe",
  "Stellung",
  "gerechnet",
  "noch einmal",
  "direkt",
  "Motor",
  {"one":"{n} Zahn","other":"{n} Zähne"},
  "eine Umdrehung geht so weit, dass Teile davon abgelesen werden müssen",
  "die Messuhr reicht nicht über den ganzen Weg: was jenseits liegt, bleibt ungeprüft",
  "weitere Läufe über dieselben Stellen zeigen, wie gut der Schlitten wiederkehrt, nicht den Weg je Umdrehung",
  "{name}: {turn} je Umdrehung",
  "{name}: Ablesungen, die springen",
  "{name}: eine Umdrehung verzählt",
  "Ablesungen",
  {"one":"{n} Ablesung. Sie liegt etwa {scatter} neben der Geraden.","other":"{n} Ablesungen. Jede liegt etwa {scatter} neben der Geraden."},
  {"one":"{n} Ablesung in {runs} Läufen an {places} Stellen. Innerhalb eines Laufs liegt jede etwa {scatter} neben der Geraden.","other":"{n} Ablesungen in {runs} Läufen an {places} Stellen. Innerhalb eines Laufs liegt jede etwa {scatter} neben der Geraden."},
  "± gilt in 95 von 100 Fällen; überzählige Ablesungen: {degrees}.",
  "± gilt in 95 von 100 Fällen; überzählige Stellen: {degrees}.",
  "Gerade und Welle je Umdrehung sind zusammen ausgeglichen.",
  "Umkehrspiel",
  "{lost}, {turn} einer Umdrehung",
  "Das ist das größte, von Umdrehung {from} bis {to}; anderswo nur {least}.",
  "Darin stehen zweifelhafte Ablesungen des Rückwegs: neu ablesen.",
  "Nicht bekannt: der Rückweg widerspricht dem Hinweg um {off}, {turn} Umdrehung.",
  "Nicht bekannt: Ablesungen des Rückwegs sind zweifelhaft; neu ablesen.",
  "Nicht gemessen: keine Ablesungen auf dem Rückweg.",
  "Nennwert",
  "{length} im Durchmesser",
  "{nominal} je Umdrehung: eine Skala danach weicht um {out} je Umdrehung ab.",
  "{nominal} je Umdrehung: eine Skala danach weicht um {out} je Umdrehung ab, {over} auf {travel}.",
  "So weit weicht kaum eine Gewindespindel ab: eines von beiden sieht nach einem Versehen aus; neu messen.",
  "über den Weg",
  "Zu wenige Ablesungen, um Verschleiß zu erkennen.",
  "Keine Krümmung, die mehr als Zufall ist.",
  "Gekrümmt: verschlissene oder gelängte Gewindespindel; nach Abschnitten messen, mit mehr Ablesungen.",
  "Nachbarn weichen gleichsinnig ab: Durbin und Watson, 1951.",
  "Ungleich: {least}, {most}.",
  "{turn} von Umdrehung {from} bis {to}",
  "Ein gleichmäßiger Weg ergibt solche Ablesungen in {percent} von 100 Fällen.",
  "Ein gleichmäßiger Weg ergibt solche Ablesungen in weniger als einem von 1000 Fällen.",
  "in der Umdrehung",
  "Nicht gemessen: keine Ablesungen in der Umdrehung.",
  "Nicht bekannt: dazu braucht es mehr Ablesungen in der Umdrehung, über mehrere Umdrehungen.",
  "Keine Abweichung je Umdrehung, die mehr als Zufall ist.",
  "Voraus und zurück um {sway}, am weitesten voraus bei {crest} der Umdrehung.",
  "dieselbe Stelle noch einmal",
  "Nicht gemessen: ein Lauf.",
  "Sie kehrt mit einer Standardabweichung von {deviation} wieder (überzählige Wiederholungen: {degrees}).",
  "Nach den Formeln von ISO 230-2, {runs} Läufe: Genauigkeit in beiden Richtungen {accuracy}, Wiederholpräzision {repeatability}, Umkehrwert {reversal}.",
  "Nach den Formeln von ISO 230-2, {runs} Läufe, wo die Norm 5 verlangt: Genauigkeit in beiden Richtungen {accuracy}, Wiederholpräzision {repeatability}, Umkehrwert {reversal}.",
  "Lauf {run}",
  "Liegt {off} über den anderen: die Messuhr hatte eine andere Null. Die Gerade gibt jedem Lauf seine eigene.",
  "Liegt {off} unter den anderen: die Messuhr hatte eine andere Null. Die Gerade gibt jedem Lauf seine eigene.",
  "Ablesung {reading}",
  "{off} neben den anderen; sie zählt noch mit. Neu ablesen.",
  {"one":"Noch {n} Ablesung neben den anderen.","other":"Noch {n} Ablesungen neben den anderen."},
  "Nach Ablesung {reading} geht es nicht weiter wie zuvor: bis das behoben ist, wird von diesem Weg je Umdrehung nichts gesagt.",
  "neu ablesen",
  {"one":"gerade eine Umdrehung zu viel: wohl verzählt","other":"gerade {n} Umdrehungen zu viel: wohl verzählt"},
  {"one":"gerade eine Umdrehung zu wenig: wohl verzählt","other":"gerade {n} Umdrehungen zu wenig: wohl verzählt"},
  "das Vorzeichen sieht falsch aus",
  "zwei Ziffern sehen vertauscht aus: {reading} würde passen",
  "eine Ziffer sieht falsch aus: {by} zu viel",
  "eine Ziffer sieht falsch aus: {by} zu wenig",
  "Wie weit jede Ablesung neben einem gleichmäßigen Weg liegt",
  "in ±: wo die Gerade selbst liegen kann, in 95 von 100 Fällen",
  "Rückweg weniger Hinweg",
  "Umdrehungen des Handrads",
  "Eine Umdrehung kann abweichen um",
  "Standardabweichung",
  "überzählige Ablesungen",
  "überzählige Stellen",
  "bekannt",
  "zusammen",
  "× {factor} = ± {half} je Umdrehung, in 95 von 100 Fällen",
  "{factor} (wie bei {degrees} überzähligen)",
  "µZoll",
  "µZoll: millionstel Zoll.",
  "Streuung der Ablesungen",
  "Skalenteil der Messuhr",
  "Fehlergrenze der Messuhr",
  "Temperatur",
  "Streuung um die Gerade ÷ Wurzel der Summe (Umdrehungen − Mittel)²",
  "Streuung eines Laufs ÷ Wurzel der Summe (Stellen − Mittel)²",
  "Skalenteil ÷ Wurzel 12, in der Streuung enthalten",
  "Skalenteil ÷ Wurzel 12, mehr als die Streuung zeigt",
  "Grenze ÷ Wurzel 3, über die gemessenen Umdrehungen",
  "Ausdehnung von Stahl ab 20 °C ÷ Wurzel 3: Gewindespindel und Messuhr dehnen sich gleich, die einer allein ist die Grenze",
  "ab Umdrehung",
  "bis Umdrehung",
  "je Umdrehung hier",
  "am Ende dem Mittel voraus",
  "Nr.",
  "Umdr.",
  "hin",
  "zurück",
  "neben der Geraden",
  "Wie abgelesen",
  {"one":"Noch {n} Ablesung steht in der Datei.","other":"Noch {n} Ablesungen stehen in der Datei."},
  "Gemessen {day}.",
  "Die Datei nennt keinen Tag der Messung.",
  "Gemessen von",
  "Messuhr",
  "Raum",
  "Vom Besitzer an der Maschine gemessen, nach dem Leitfaden zur Angabe der Unsicherheit beim Messen gerechnet. Kein Kalibrierschein; nach Reparatur oder Nachstellen neu messen.",
  {"one":"geht genau auf: {n} Skalenteil je Umdrehung","other":"geht genau auf: {n} Skalenteile je Umdrehung"},
  "zeigt je Umdrehung {each} zu viel; {over} auf {travel}",
  "zeigt je Umdrehung {each} zu wenig; {over} auf {travel}",
  "{perTurn} von Umdrehung {from} bis {to}",
  "{size} ± {off}, am weitesten voraus bei {crest} Umdrehung",
  "Leichte Maschine: höchstens die Mitte des veröffentlichten Bereichs.",
  "Als kräftige Maschine angegeben: bis zum oberen Ende des veröffentlichten Bereichs.",
  "Veröffentlichte Schnittgeschwindigkeiten × {factor}, wie die Maschinendatei verlangt.",
  "{what}: messen, bevor man einer Drehzahl traut.",
  "Nahe an der Grenze und nicht gemessen: {positions}. Erst messen.",
  "{position} ({speeds} U/min)",
  "Eine Scheibe von {pulley} ist nicht, was die Datei sagt: keine Drehzahl darüber ist bekannt; erst messen.",
  "Messung {which} kann nicht stimmen: sie ist falsch, oder Motor oder eine Scheibe sind nicht, was die Datei sagt. Keine Drehzahl ist bekannt; erst messen.",
  "Messungen {which} können nicht stimmen: Motor oder eine Scheibe sind nicht, was die Datei sagt. Keine Drehzahl ist bekannt; erst messen.",
  "Messung {which} zweifelhaft: nicht verwendet, aber gegen die Grenzen gehalten. Neu messen.",
  "{rpm} U/min sind ungewöhnlich für einen Motor: {least} bis {most} U/min sind üblich",
  "{rpm} U/min sind ungewöhnlich für einen Tretantrieb: {least} bis {most} U/min sind üblich",
  "{rpm} U/min sind ungewöhnlich für eine Handkurbel: {least} bis {most} U/min sind üblich",
  "kein Asynchronmotor läuft mit {rpm} U/min an {hertz} Hz",
  "über der Grenze, nicht benutzen",
  "kann {rpm} erreichen, nicht benutzen",
  "nie über {rpm}",
  "nahe an der Grenze, erst messen",
  "erst messen",
  "Messung zweifelhaft",
  "{wheel}: {why}: neu messen, bevor man sich darauf verlässt.",
  "{wheel} ist verschlissen: von Stelle zu Stelle weicht der Weg bis zu {most} vom Mittel ab. Das ± einer Strecke enthält das; das ± einer Umdrehung gilt für das Mittel.",
  "{wheel} eilt einmal je Umdrehung um bis zu {most} vor und nach; das steckt in jedem ± hier; ganze Umdrehungen sind frei davon.",
  "{wheel} weicht entlang einer Kurve ab: streckenweise liegen Ablesungen bis {most} neben einem gleichmäßigen Weg je Umdrehung, was jedes ± hier für Zufall nimmt. Abschnittsweise messen, mit mehr Ablesungen.",
  {"one":"{wheel}: eine Ablesung liegt neben den anderen; sie zählt im Weg je Umdrehung und seinem ± mit, bis sie wiederholt ist.","other":"{wheel}: {n} Ablesungen liegen neben den anderen; sie zählen im Weg je Umdrehung und seinem ± mit, bis sie wiederholt sind."},
  "der Weg je Umdrehung ist das {times}-Fache des Nennwerts",
  "die Ablesungen reichen weiter, als der Schlitten fährt",
  "Umdrehung 0 der Ablesungen: {where}. Dort einen Maßstab anlegen: er zeigt, wie weit der Schlitten davon steht.",
  "Die Datei sagt nicht, wo der Schlitten bei Umdrehung 0 der Ablesungen stand: ohne diese Stelle ist nichts berichtigt, und jedes ± hält den Verschleiß mit.",
  "abgelesen wurde nur bei ganzen Umdrehungen: ein Fehler innerhalb der Umdrehung wurde nicht gemessen",
  "Umkehrspiel von {turn} Umdrehung zweifelhaft: eine sehr lose Mutter, oder Hin- und Rückweg wurden von verschiedenen Umdrehungen gezählt",
  "Umkehrspiel nicht bekannt: seine Ablesungen widersprechen sich",
  "Umkehrspiel nicht bekannt: auf dem Rückweg wurde eine Umdrehung falsch gezählt",
  {"one":"Umkehrspiel nicht bekannt: eine Ablesung des Rückwegs passt nicht zu den anderen","other":"Umkehrspiel nicht bekannt: {n} Ablesungen des Rückwegs passen nicht zu den anderen"},
  "Die Ablesungen dieses Handrads springen unterwegs: bis das behoben ist, lassen sich keine Umdrehungen angeben.",
  "In den Ablesungen dieses Handrads wurde eine Umdrehung verzählt: bis das behoben ist, lassen sich keine Umdrehungen angeben.",
  "Der Weg je Umdrehung dieses Handrads ist nicht angegeben: es lassen sich keine Umdrehungen angeben.",
  "Wie genau druckt dieser Drucker?",
  "quer",
  "längs",
  "Auf 100 % drucken, nie „an Seite anpassen“, auf das Papier der Skalen; nur diese Seite kommt ohne die Berichtigung der Datei. Liegen lassen, flach aufkleben.",
  "Stahlmaßstab in Millimetern, gutes Licht: bei 10 mm anlegen und 10 abziehen.",
  "Stahlmaßstab in fünfzigstel Zoll (hundertstel: jeder zweite Strich), gutes Licht: bei 1 Zoll anlegen und 1 abziehen.",
  "Obere Seite: ein Strich des Maßstabs an die linke Ecke. Ganze Millimeter am Strich 0 des Kamms; der Kammstrich, der auf einen Teilstrich trifft, gibt die Zehntel. Strich 0 zwischen {least} und {most}, Strich 3 trifft: {reading}.",
  "Obere Seite: ein Strich des Maßstabs an die linke Ecke. Zoll und Fünfzigstel (0,02 Zoll) am Strich 0 des Kamms; der Kammstrich, der auf einen Teilstrich trifft, gibt, wievielmal 0,002 Zoll mehr. Strich 0 zwischen {least} und {most}, Strich 3 trifft: {reading}.",
  "Linke Seite ebenso, von der unteren Ecke nach oben.",
  "Diagonalen 1 und 2, von den oberen Ecken nach unten. Kurzer Maßstab: bis zum Kreuz, von dort weiter, zusammenzählen.",
  "Mehr als 5 % daneben? Dann war „an Seite anpassen“ an, oder das Papier der Datei ({paper}) ist nicht das des Druckers.",
  "Maßstab",
  "Kamm",
  "Seite",
  "soll sein",
  "gemessen",
  "nochmals",
  "Diagonale {number}",
  "In die Maschinendatei, davon die Mittel:",
  "Die Datei kennt noch keinen Drucker: ihre Seiten werden gedruckt, wie sie sind.",
  "Jetzt in der Datei, für {printer}: {figures}. Danach werden alle anderen Seiten richtig; quer ist die kurze Seite des Bogens, längs die lange, auch wo eine Seite quer liegt.",
  "quer {measured} statt {nominal}",
  "längs {measured} statt {nominal}",
  "Diagonalen {first} und {second}",
  "Drucker",
  "Papier",
  "Datum",
  "Riemen",
  "U/min",
  "einzige",
  "~ gerechnet, nicht gemessen",
  "Handrad",
  "Weg einer Umdrehung",
  "ein Skalenteil",
  "Skala zeigt",
  "Zahlen wachsen",
  "Umkehrspiel",
  "Durchmesser",
  "Weg",
  "im Uhrzeigersinn",
  "gegen den Uhrzeigersinn",
  "nicht gemessen",
  "ohne Angabe",
  "Umdrehung verzählt: neu messen",
  "streut",
  "Drehzahlen",
  "Handräder",
  "Bevor es losgeht",
  "Mappe",
  "Inhalt",
  "Inhalt nach Mappenseiten",
  "Auf 100 % drucken, nie „an Seite anpassen“, und einen Stahlmaßstab an die Prüfstrecke einer Seite legen. Hochformat links lochen, Querformat oben.",
  "Nicht in dieser Mappe: {sheets}.",
  "Ein Blatt mit älterem Stand als dem der Maschine ist Altpapier.",
  "Mappe {page}",
  "es ist zum Drehen, und in der Datei steht kind: {kind}",
  "es ist zum Bohren, und in der Datei steht kind: {kind}",
  "eine Karte von {width} × {height} passt nicht auf {paper}, wo innerhalb der Schnittmarken {across} × {down} bleiben; größeres Papier, eine kleinere Karte oder schmalere Ränder wählen",
  "es wären {cards} Karten; größere Karten geben (card: in der Vorlage, drive: cover: in der Maschinendatei) oder weniger darauf zeigen",
  "seine Ränder lassen auf {paper} keinen Platz; schmalere Ränder oder größeres Papier wählen",
  "größeres Papier als {paper} wählen",
  "ohne {name}, was größer als das Papier ist; {remedy}",
  "die Datei enthält nichts, was dieses Blatt zeigt",
  "ein Teil ist größer als die Seite; größeres Papier als {paper} wählen",
  "die Datei hat keinen Antrieb: Motor und Stufen angeben",
  "die Datei hat keinen Antrieb und kein Handrad mit Weg je Umdrehung",
  "in den Ablesungen wurde eine Umdrehung verzählt, und kein anderes Handrad hat einen Weg je Umdrehung",
  "kein Handrad der Datei hat einen Weg je Umdrehung",
  "kein Skalenring ist nach dieser Messung verlässlich: check sagt, warum, und was helfen würde",
  "kein Handrad der Datei hat Weg je Umdrehung und Skalenring",
  "der Skalenring, zu dem ein Nonius gehört, wird nicht gemacht: check sagt, warum",
  "kein Skalenring der Datei verlangt einen Nonius: einem vernier: 10 geben",
  "kein Handrad der Datei hat Ablesungen: das Messblatt sagt, wie man sie nimmt",
  "kein Auftrag angegeben: mit --job eine Auftragsdatei nennen",
  "die Datei hat keine Längenskalen (scales)",
  "die Datei hat keine Gradskalen (angleScales)",
  "keine der Skalen gehört zu den verlangten Handrädern",
  "Gradskalen",
  "Riemenkarte",
  "Teilungen zur Wahl",
  "Teile zum Ausschneiden",
  "Bohrkarte",
  "Gravur",
  "Vorschub von Hand",
  "Messprotokoll",
  "Messblatt",
  "Arbeitsplan",
  "Druckerprobe",
  "Teilen eines Skalenrings",
  "Längenskalen",
  "Drehzahlschaubild",
  "Drehzahlbaum",
  "Anfangswerte der Umdrehungen",
  "Anschläge und gleiche Längen",
  "Für Lernende",
  "Kegel",
  "Gewinde von Hand",
  "Umdrehungen und Wege",
  "Nonien",
  "Baustahl",
  "Automatenstahl",
  "Grauguss",
  "Werkzeugstahl",
  "Messing",
  "Bronze",
  "nichtrostender Stahl",
  "Aluminium",
  "Kunststoff",
  "Acetal (POM)",
  "Acrylglas",
  "Hart-PVC",
  "Polystyrol",
  "nichtrostender Automatenstahl",
  "Magnesium",
  "PTFE",
  "Polyamid (PA)",
  "Zinklegierung",
  "Vergütungsstahl",
  "kohlenstoffreicher Stahl",
  "legierter Stahl",
  "Kupfer",
  "Schweißeisen",
  "Hartholz",
  "Titan",
  "Zirkonium",
  "Kupfer-Beryllium",
  "Schneidöl oder Bohremulsion",
  "reichlich Schneidöl; den Meißel nie schaben lassen",
  "trocken",
  "trocken oder etwas Luft; kühl halten",
  "trocken oder etwas Luft",
  "nur nach Angabe des Werkstofflieferanten",
  "trocken; Schneidöl zum Bohren und Reiben",
  "Petroleum oder Bohremulsion",
  "trocken; nie Wasser",
  "Petroleum oder trocken",
  "Bohremulsion",
  "reichlich Schneidöl: es bindet den Staub",
  "Kunststoff wird weich und wickelt sich um den Meißel: zum Wegräumen der Späne anhalten.",
  "Petroleum auf dem Werkstück brennt: keine Flamme in der Nähe.",
  "Gussstaub: von den Führungen und aus der Lunge fernhalten.",
  "Magnesium",
  "Zirkonium",
  "Titan",
  "Beryllium",
  "Fluorkunststoffe",
  "PVC",
  "Holz",
  "Magnesiumspäne fangen Feuer. Scharfe Werkzeuge; kein feiner Vorschub, kein Verweilen, nichts, was schabt; unter 213 m/min (700 ft/min). Trocken zerspanen. Späne oft und trocken auffegen. Trockener Sand oder ein Metallbrandlöscher in Reichweite: nie Wasser, Flüssigkeit oder Schaum.",
  "Zirkoniumstaub und feine Späne fangen Feuer durch einen Funken oder einen schabenden Meißel. Scharfe Werkzeuge, kräftiger Vorschub, kein Verweilen; Späne oft entfernen, keine in der Werkstatt aufbewahren. Trockener Sand oder ein Metallbrandlöscher in Reichweite: nie Wasser auf Brennendes.",
  "Titanstaub und feine Späne fangen Feuer. Scharfe Werkzeuge, kräftiger Vorschub, kein Verweilen, nichts, was schabt; Späne oft entfernen. Trockener Sand oder ein Metallbrandlöscher in Reichweite: nie Wasser auf Brennendes.",
  "Staub und Dämpfe von Beryllium schädigen die Lunge auf Lebenszeit, auch aus Legierungen mit Kupfer. Nie schleifen, schmirgeln oder polieren; Schnitt und Späne nass halten, nass aufwischen, nie blasen oder fegen; vor dem Essen waschen. Nicht ohne fachkundige Aufsicht.",
  "Heiße Fluorkunststoffe (PTFE und ähnliche) geben giftige Dämpfe ab: scharfe Werkzeuge, kühl halten, lüften. Nicht rauchen: ein Krümel in der Glut genügt.",
  "Heißes PVC gibt saure Dämpfe ab: raucht es, anhalten und lüften.",
  "Holzstaub schadet der Lunge und brennt: absaugen, Maske tragen, keine Flamme in der Nähe. Staub mancher Hölzer (Eibe, Iroko, Cocobolo, Palisander, Goldregen) vergiftet oder macht krank.",
  "Kap. 4, Sicherheit",
  "Zirkonium",
  "Titan",
  "Werkstattbrauch",
  "NFPA 484, brennbare Metalle (aus dem Gedächtnis)",
  "US 29 CFR 1910, Arbeitsschutz (aus dem Gedächtnis)",
  "US Army TC 9-524, Fundamentals of Machine Tools (aus dem Gedächtnis)",
  "Blatt eines Werkzeuglieferanten für Leichtmetalle",
  "Datenblatt eines Magnesiumlieferanten",
  "Zerspanungshinweise eines Kunststofflieferanten",
  "Drehhinweise eines Kunststofflieferanten",
  "Vorschubblatt einer Lehrwerkstatt",
  "Blatt einer Lehrwerkstatt über Schnittgeschwindigkeiten und Vorschübe",
  "ein Taschenbuch technischer Formeln, S. 439 (19. Jh.)",
  "Scientific American, Rezepte (19. Jh.)",
  "Richtwerte eines Gewindebohrerherstellers",
  "Schnittgeschwindigkeiten eines Gewindebohrerherstellers",
  "US Navy training course 14345, Bohren",
  "Schnellarbeitsstahl (HSS)",
  "Werkzeugstahl, unlegiert",
  "Hartmetall",
  "der Maschinendatei",
  "Wert für {what}",
  "Stahl mit wenig Kohlenstoff",
  "Kunststoffe allgemein",
  "legierten Stahl unter 250 HB",
  "legierten Stahl von 250 bis 350 HB",
  "für Drehen wurde keiner gefunden",
  "für Bohren wurde keiner gefunden",
  "für Automatenstahl wurde keiner gelesen; er verträgt mehr",
  "für Stahl mit viel Kohlenstoff wurde keiner gelesen",
  "für legierten Stahl wurde keiner gefunden",
  "die Maschinendatei",
  "ohne Namen",
  "größer als das Papier: {names}",
  "die Tabelle „{table}“ braucht {wants} in der Breite und hat {has}",
  "die Tabelle „{table}“ ist breiter als {has}",
  "die Stellungen auf der Riemenkarte brauchen {wants} in der Breite und haben {has}",
  "eine Zeile der Riemenkarte braucht {wants} in der Breite und hat {has}",
  "{positions} Stellungen brauchen mehr als {cards} Riemenkarten dieser Größe",
  "die Riemenkarte ist zu klein für eine einzige Zeile unter den Warnungen",
  "den Stufen kurze Namen geben, wie A oder 1 (lange erklärt jede Karte); oder {else}",
  "weniger Werkstoffe nennen (positions: { materials: 4 } in einer eigenen Vorlage) oder mehr Platz geben: drive: cover: in der Maschinendatei, card: in einer eigenen Vorlage, oder größeres Papier",
  "die Balken der Druckerprobe haben keinen Platz",
  "die Wörter der Druckerprobe haben zwischen den Balken keinen Platz",
  "ausgerückt",
  "direkt",
  "eingerückt",
  "offen",
  "eingerückt",
  "Umdrehungen",
  "Umdrehungen, Achtel",
  "Teilstriche",
  "Richtig.",
  "Hier lässt sich nichts bewerten.",
  "Der richtige Teilstrich war {figure} {unit}, nach {turns}.",
  "Der richtige Teilstrich war {figure} {unit}, Reihe {row}, nach {turns}.",
  "Dreh die Skala.",
  "{counted} zu viel",
  "{counted} zu wenig",
  "{counted} zu weit",
  "{counted} zu kurz",
  "{length} zu viel",
  "{length} zu wenig",
  "Viel zu viel: noch einmal lesen, wonach gefragt ist und in welcher Einheit.",
  "{much}: {counted}",
  "{one} und {other}",
  "{off}; und du bist zurückgekommen, der Schlitten wartet: dreh weiter zurück als das Umkehrspiel und komm neu heran.",
  "Der Teilstrich stimmt, aber du bist zurückgekommen, und der Schlitten wartet: dreh weiter zurück als das Umkehrspiel und komm neu heran.",
  "{n} Umdrehungen oder {n} Achtel? Schreib es dazu.",
  "Schreib {example}.",
  "Umdrehungen, wie 2,5, 2 5/8 oder 2 Umdrehungen und 5 Achtel",
  "eine Zahl, wie 2,5",
  "eine Länge, wie 2,5",
  "eine Länge, wie 1/8",
  "Wähl eine Stellung.",
  "nirgends: fragen",
  "Es gibt einen Platz für den Riemen.",
  "Das ist kein Platz für ihn.",
  "{counted} zu schnell.",
  "{counted} zu langsam.",
  "{part} einer Umdrehung",
  "{part} eines Teilstrichs",
  "{part} eines Achtels",
  {"one":"{n} Stellung","other":"{n} Stellungen"},
    ]);
    return de;
  },
};
