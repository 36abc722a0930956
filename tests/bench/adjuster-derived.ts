/** What the bench of one adjuster times, in one module, as a page has it. */
export { partsOf, springForce, standing } from '../../widgets/assembly/adjuster/adjuster.ts';
export { numbersOfAdjuster } from '../../widgets/assembly/adjuster/as-numbers.ts';
export { massOf, ringsOf } from '../../widgets/assembly/adjuster/part.ts';
export { partsListOf } from '../../widgets/assembly/adjuster/parts-list.ts';
export { jointPlay, turnsLostIn } from '../../widgets/assembly/adjuster/play.ts';
export { meshOf } from '../../widgets/assembly/adjuster/solid.ts';
export { crestsOf, sectionOf } from '../../widgets/assembly/adjuster/surface.ts';
export { readAdjuster } from '../../widgets/assembly/adjuster/text.ts';
export { fitOf } from '../../widgets/assembly/fit-state.ts';
