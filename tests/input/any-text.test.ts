/**
 * A hundred thousand texts to each reader of the engine: it gives a value with every number finite or one clear sentence, and never
 * throws. What it gives is written out again where there is a writer, and reads back as the same.
 */

import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { type Result, UNITS, type Unit } from '../../widgets/engine/index.ts';
import { readThread } from '../../widgets/input/designation.ts';
import {
  readFeet,
  readReadings,
  readRounds,
  writeFeet,
  writeReadings,
  writeRounds,
} from '../../widgets/input/levelling-table.ts';
import { readPartsList } from '../../widgets/input/parts-list.ts';
import { readNumber, readQuantity, readTime } from '../../widgets/input/quantity.ts';
import { parseReadings, toCsv, writeReadingsTable } from '../../widgets/input/readings-table.ts';
import { LONGEST_LIST, readSeriesList, readThreadList } from '../../widgets/input/thread-list.ts';
import { readWayPrices } from '../../widgets/input/way-prices.ts';
import { reasonOf } from '../../widgets/words/reason.ts';
import { allFinite, anyText, isSentence, MANY, readOrSaid } from '../support/any-text.ts';

// A hundred thousand cases take seconds, and many where the processor is shared.
vi.setConfig({ testTimeout: 120_000 });

/** A fault names the text it was found with. */
const sound = (holds: boolean, text: unknown, value: unknown): void => {
  if (!holds) throw new Error(`${JSON.stringify(text)} gives ${JSON.stringify(value)}`);
};

const UNIT_NAMES = Object.keys(UNITS) as Unit[];
const LENGTHS = UNIT_NAMES.filter((unit) => UNITS[unit].base === 'mm');
const SPELLINGS = Object.values(UNITS).flatMap((u) => [...u.spellings]);

describe('any text typed as a number or a quantity', () => {
  const typed = anyText(
    [
      '87.50 µm',
      '3,44 thou',
      '30°',
      '1 1/2 in',
      '1-1/2',
      '.375 in',
      '−2.5',
      '2e-3 mm',
      '3/8',
      '24 h',
      '12 ppm/K',
      '5 %',
    ],
    ['1/2', '1 1/2', '0.5', 'e', 'e9', '+', ...SPELLINGS],
  );

  it('gets a finite value, digits and half a step, or a sentence', () => {
    let good = 0;
    fc.assert(
      fc.property(typed, fc.constantFrom(...LENGTHS, ...LENGTHS, ...LENGTHS, ...UNIT_NAMES), (text, unit) => {
        const value = readOrSaid(readQuantity(text, UNITS[unit].base, unit), text);
        sound(allFinite(value), text, value);
        if (value !== undefined) {
          good++;
          sound(value.digits >= 1 && value.half >= 0 && UNITS[value.unit].base === UNITS[unit].base, text, value);
        }
        const number = readOrSaid(readNumber(text), text);
        sound(allFinite(number), text, number);
        const time = readOrSaid(readTime(text), text);
        sound(allFinite(time), text, time);
      }),
      MANY,
    );
    expect(good).toBeGreaterThan(MANY.numRuns * 0.025);
  });
});

describe('any text typed as a list', () => {
  it('of threads or of series gets those that are read and a sentence for each that is not', () => {
    const typed = anyText(
      ['M10, 3/8-16 UNC', 'M4x0.7; 8-36 UNF; M6', 'M8x1.25\nM12x1,5 LH', 'coarse, UNF', 'metric; UNEF', 'all', 'none'],
      ['M10', 'M4x0,7', 'MF8', '3/8-16', '#8-36', 'UNC ', 'UNR', ' fine', ' thread', ', ', '; ', ' LH', '-6g'],
    );
    fc.assert(
      fc.property(typed, (text) => {
        const list = readOrSaid(readThreadList(text), text);
        if (list) {
          sound(allFinite(list), text, list);
          sound(
            list.wrong.every((w) => isSentence(reasonOf(w.why))),
            text,
            list,
          );
          for (const thread of list.threads) {
            const again = readOrSaid(readThread(thread.designation), thread.designation);
            sound(again?.designation === thread.designation && again.L === thread.L, text, thread);
          }
        }
        readOrSaid(readSeriesList(text), text);
      }),
      MANY,
    );
  });

  it('of feet, readings or rounds gets finite places, which are written out and read back as the same', () => {
    const typed = anyText(
      [
        '1: 0, 0; 2: 240, 0; C: 120, 180',
        '-50, 3; 1 in, 0.5 in; 40 -900.25',
        '40, 20: 0; 200, 20: -84 µm; 200, 160: 14; 40, 160: 94',
        '0, 0: 90; 1000, 0: 1 thou; 0, 2000: -0.5 mm',
        '1; 2; 3; 4\n0; 0; 0; 0',
        '3, -1, 0.5 | 0.001 mm; 0; 0',
      ],
      ['0, 0', '; ', '\n', ' | ', ': ', 'A: ', '2: ', '12,5', ' µm', ' in', '(', ')', '1e4', '1e-9', '\t'],
    );
    /** The same but for numbers, which may be off by so much, mm, or by what nine digits leave out. */
    const alike = (a: unknown, b: unknown, off: number): boolean =>
      typeof a === 'number' && typeof b === 'number'
        ? Math.abs(a - b) <= Math.max(off, 1e-8 * Math.abs(a))
        : typeof a === 'object' && a !== null && typeof b === 'object' && b !== null
          ? Object.keys(a).length === Object.keys(b).length &&
            Object.entries(a).every(([key, x]) => alike(x, (b as Record<string, unknown>)[key], off))
          : a === b;
    let good = 0;
    const goesRound =
      <T>(read: (text: string) => Result<T>, write: (value: T) => string, off: number) =>
      (text: string) => {
        const value = readOrSaid(read(text), text);
        if (value === undefined) return;
        good++;
        sound(allFinite(value), text, value);
        const out = write(value);
        if (out.length > LONGEST_LIST) return;
        const again = read(out);
        // What stands all but in a line may stand in one when its last digits are gone.
        if (!again.ok && reasonOf(again).includes('in a line')) return;
        sound(alike(value, readOrSaid(again, out), off), text, [value, out]);
      };
    const checks = [
      goesRound(readFeet, writeFeet, 1e-6),
      goesRound(readReadings, writeReadings, 1e-6),
      // To a tenth of a micrometre.
      goesRound(readRounds, writeRounds, 5.1e-5),
    ];
    fc.assert(
      fc.property(typed, (text) => {
        for (const check of checks) check(text);
      }),
      MANY,
    );
    expect(good).toBeGreaterThan(MANY.numRuns * 0.01);
  });

  it('of parts or prices gets finite sums or a sentence', () => {
    const typed = anyText(
      ['stud M10: 2 × 1.20; ball: 1 × 0.35; guide post', 'plain screw: 1 × 46; wedge: 2 × 9', 'lever: 3x1,5\nwedge'],
      [': ', '; ', ' × ', 'x', 'wedge', 'ball', '2', '0.35', '1000', '1e6', '-1'],
    );
    fc.assert(
      fc.property(typed, (text) => {
        const parts = readOrSaid(readPartsList(text), text);
        sound(allFinite(parts) && !((parts?.total ?? 0) < 0), text, parts);
        const prices = readOrSaid(readWayPrices(text), text);
        sound(allFinite(prices), text, prices);
      }),
      MANY,
    );
  });
});

describe('any text pasted as a table of readings', () => {
  it('gets finite rows in order, which are written out and read back as the same, or a sentence', () => {
    const typed = anyText(
      [
        'turns; reading (µm); direction\n0; 0; up\n1; 87,5; up\n1; 88; down',
        'turns,reading (mm)\n0,0.1\n0.5,0.2',
        'flats\tthou\n0\t0\n1\t0.57\n',
        '0 0\n1 87.5\n2 175',
        '"turns","reading, µm"\n"0","1,5"\n"1","2,5"',
        '# a note\ndegrees; z\n0; 0\n360; 88',
      ],
      [
        'turns',
        'reading (µm)',
        ';',
        '\t',
        '\n',
        '\r\n',
        'up',
        'down',
        '0,5',
        '1.5',
        '(',
        ')',
        '#',
        'flats',
        '°',
        'in',
        '1e9',
      ],
    );
    let good = 0;
    fc.assert(
      fc.property(typed, (text) => {
        const table = readOrSaid(parseReadings(text), text);
        if (!table) return;
        good++;
        sound(allFinite(table) && table.rows.length > 0, text, table);
        // Readings of a kilometre and more are taken in mm and in no smaller unit.
        if (table.rows.some((row) => Math.abs(row.reading) > 1e6)) return;
        const out = writeReadingsTable(table.rows);
        const again = readOrSaid(parseReadings(out), out);
        const alike = (a: number, b: number) => Math.abs(a - b) <= 1e-11 * Math.abs(a);
        sound(
          again?.rows.length === table.rows.length &&
            again.rows.every((row, i) => {
              const was = table.rows[i];
              return (
                was && alike(was.turns, row.turns) && alike(was.reading, row.reading) && was.direction === row.direction
              );
            }),
          text,
          out,
        );
      }),
      MANY,
    );
    expect(good).toBeGreaterThan(MANY.numRuns * 0.025);
  });

  it('comes back cell for cell from what toCsv writes of it', () => {
    const cell = anyText(['a, b', 'say "so"', 'two\nlines', '=1+1'], [',', ';', '"', '\r\n']);
    fc.assert(
      fc.property(cell, cell, (a, b) => {
        const text = toCsv(['one', 'two'], [[a, b]]);
        sound(text.endsWith('\r\n') && (text.match(/"/g)?.length ?? 0) % 2 === 0, [a, b], text);
        sound(!/^"?[\s\0]*=/.test(text.slice('one,two\r\n'.length)), [a, b], text);
      }),
      MANY,
    );
  });
});
