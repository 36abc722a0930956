/** The German edition as modules. */
import { loadRooms } from '../../widgets/site/rooms.mjs';
import type * as InGerman from './in-german.ts';

export const german = (): Promise<typeof InGerman> => loadRooms('tests/support/in-german.ts', 'de');
