/** Words of the torque both ways. */

interface Caption {
  readonly load: string;
  readonly friction: string;
  readonly torque: string;
  /** As `asMuch`, `times` or `lessThan` compares it. */
  readonly compared: string;
  readonly efficiency: string;
  readonly plain: string;
  readonly plainEfficiency: string;
  /** As `holds`, `onTheEdge` or `runsBack` says it. */
  readonly holds: string;
}

export const WORDS = {
  title: 'Torque both ways, thread by thread',
  drawing: 'Torques both ways, thread by thread, to one scale',
  kinds: {
    'a-rub': 'friction in thread A',
    'a-slope': 'slope of thread A',
    'c-rub': 'friction in thread C',
    'c-slope': 'slope of thread C',
    key: 'friction of the key',
    collar: 'collar or tip',
  },
  rows: {
    raise: 'torque, load raised',
    lower: 'torque, load lowered',
    efficiency: 'efficiency of the pair',
    alone: 'torque of thread C alone, load raised',
  },
  pair: (A: string, C: string) => `${A} with ${C}`,
  alone: (C: string) => `${C} alone`,
  raised: 'load raised',
  lowered: 'load lowered',
  turning: (way: string, sense: string) => `${way}, ${sense}`,
  case: (what: string, way: string) => `${what}, ${way}`,
  caseTorque: (what: string, way: string, torque: string) => `${what}, ${way}: ${torque}`,
  handFeels: 'what the hand feels',
  frictionless: (torque: string) => `without friction: ${torque}`,
  holds: (torque: string) => `It holds by itself: lowering takes ${torque} of the hand.`,
  onTheEdge: 'It only just holds: lowering takes no torque at all.',
  runsBack: (torque: string) =>
    `It runs back by itself: under the load it turns with ${torque}, which the hand must hold.`,
  asMuch: (C: string) => `as much as ${C} alone`,
  times: (times: string, C: string) => `${times} times the torque of ${C} alone`,
  lessThan: (times: string, C: string) => `where ${C} alone takes ${times} times as much`,
  caption: ({ load, friction, torque, compared, efficiency, plain, plainEfficiency, holds }: Caption) =>
    `Raising ${load} with friction ${friction} takes ${torque}, ${compared}. The efficiency is ${efficiency}, that of ${plain} alone ${plainEfficiency}. ${holds}`,
  caseHead: 'case',
  torqueHead: 'torque',
};
