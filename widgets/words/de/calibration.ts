/** Was nach Ablesungen gefragt wird, die nach einer anderen Einheit aussehen. */
import { say, type UnitSlip } from '../../engine/index.ts';
import type * as En from '../en/calibration.ts';

const SLIPS: Readonly<Record<UnitSlip, readonly [factor: string, question: string]>> = {
  'µm as mm': ['tausend', 'wurden Ablesungen in µm als mm eingelesen?'],
  'mm as µm': ['ein Tausendstel', 'wurden Ablesungen in mm als µm eingelesen?'],
  'µm as thou': ['25,4', 'wurden Ablesungen in µm als thou eingelesen, oder in mm als Zoll?'],
  'thou as µm': ['1/25,4', 'wurden Ablesungen in thou als µm eingelesen, oder in Zoll als mm?'],
  'thou as mm': ['1000/25,4', 'wurden Ablesungen in thou als mm eingelesen?'],
  'mm as thou': ['25,4/1000', 'wurden Ablesungen in mm als thou eingelesen?'],
  'turns as flats': ['sechs', 'wurden ganze Umdrehungen als Flächen eingelesen?'],
  'flats as turns': ['ein Sechstel', 'wurden Flächen als ganze Umdrehungen eingelesen?'],
};

export const unitQuestionText: typeof En.unitQuestionText = (asked) => {
  if (asked.kind === 'sense')
    return 'Der Anstieg hat das andere Vorzeichen als die Sollsteigung: Wurde gegen den Uhrzeigersinn als Plus gezählt, oder zeigt die Messuhr abwärts?';
  const [factor, question] = SLIPS[asked.slip];
  return `Der Anstieg ist ${say(asked.ratio, 3)} mal die Sollsteigung, das ist etwa ${factor}: ${question}`;
};
