/** Was von Kräften auf Gewinde und Teile gesagt wird. */
import { say } from '../../engine/index.ts';
import type * as En from '../en/force.ts';
import type { Same } from '../same.ts';

export const PART_WORDS: Same<typeof En.PART_WORDS> = {
  base: 'das Grundteil',
  turned: 'das Stellteil',
  carried: 'das Hubteil',
};

export const SENSES: Same<typeof En.SENSES> = {
  clockwise: 'im Uhrzeigersinn',
  anticlockwise: 'gegen den Uhrzeigersinn',
};

const OF_PART = { turned: 'des Stellteils', carried: 'des Hubteils' } as const;
const FLANK = { pressed: 'Druckflanke', pulled: 'Zugflanke' } as const;

export const flankText: typeof En.flankText = (thread, flank) =>
  `${FLANK[flank]} ${OF_PART[thread === 'A' ? 'turned' : 'carried']}`;

export const threadVerdictText: typeof En.threadVerdictText = (thread, verdict, margin) => {
  switch (verdict.kind) {
    case 'seated':
      return `Gewinde ${thread}: Die ${flankText(thread, verdict.flank)} liegt über den ganzen Hub an, mit ${say(verdict.least)} N oder mehr.`;
    case 'short of margin':
      return `Gewinde ${thread}: Die ${flankText(thread, verdict.flank)} liegt über den ganzen Hub an, aber von den verlangten ${say(margin)} N bleiben nur ${say(verdict.least)} N.`;
    case 'lets go':
      return `Gewinde ${thread}: Die Flanken öffnen sich bei ${say(verdict.n)} Umdrehungen, das Hubteil bei ${say(verdict.z_c)} mm, unter einer Last von ${say(verdict.load)} N${verdict.load < 0 ? ' (vom Grundteil weg gezogen)' : ''}.`;
  }
};
