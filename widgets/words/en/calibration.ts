/** What the room of calibration asks of readings that look like another unit. */
import { say, type UnitQuestion, type UnitSlip } from '../../engine/index.ts';

const SLIPS: Readonly<Record<UnitSlip, readonly [factor: string, question: string]>> = {
  'µm as mm': ['a thousand', 'were readings in µm imported as mm?'],
  'mm as µm': ['a thousandth', 'were readings in mm imported as µm?'],
  'µm as thou': ['25.4', 'were readings in µm imported as thou, or in mm as inches?'],
  'thou as µm': ['1/25.4', 'were readings in thou imported as µm, or in inches as mm?'],
  'thou as mm': ['1000/25.4', 'were readings in thou imported as mm?'],
  'mm as thou': ['25.4/1000', 'were readings in mm imported as thou?'],
  'turns as flats': ['six', 'were whole turns imported as flats?'],
  'flats as turns': ['a sixth', 'were flats imported as whole turns?'],
};

export const unitQuestionText = (asked: UnitQuestion): string => {
  if (asked.kind === 'sense')
    return 'The slope has the opposite sign to the nominal lead: were turns counted anticlockwise as positive, or does the indicator read downwards?';
  const [factor, question] = SLIPS[asked.slip];
  return `The slope is ${say(asked.ratio, 3)} times the nominal lead, which is about ${factor}: ${question}`;
};
