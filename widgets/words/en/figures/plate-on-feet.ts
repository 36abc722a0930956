/** Words of the plate seen on its three feet. */

interface Foot {
  readonly name: string;
  readonly height: string;
  readonly way: 'level' | 'high' | 'low';
  readonly order: string;
}

const stands = ({ name, height, way }: Foot): string =>
  way === 'level' ? `over foot ${name} it is level` : `over foot ${name} it is ${height} too ${way}`;

export const WORDS = {
  title: 'The plate on its three feet',
  drawing: 'Three adjusters under a plate, seen from the side and a little from above',
  sliders: { round: 'look round', above: 'look from above' },
  degrees: (count: string) => `${count}°`,
  foot: (name: string, height: string) => `${name}: ${height}`,
  magnified: (times: string, closer: string) =>
    `Heights of the plate are drawn ${times} times larger${closer === '1' ? '' : `, the feet stand ${closer} times nearer to each other`}. The adjusters and the turns of their heads are true.`,
  caption: (v: { readonly round: number; readonly feet: readonly Foot[]; readonly done: string | undefined }) =>
    `Round ${v.round}: ${v.feet.map(stands).join(', ')}. ${v.done ?? `Now ${v.feet.map(({ name, order }) => `${name}: ${order}`).join(', ')}.`}`,
  rows: {
    height: (foot: string) => `plate over foot ${foot}`,
    turns: (foot: string) => `foot ${foot} from mid-stroke`,
  },
  head: ['foot', 'plate over it', 'turns from mid-stroke', 'to turn'],
} as const;
