/**
 * Every relation of the engine, found where it is defined: a file of a room that exports one is enough. Chapters name them by
 * `name`; the command line lists them, room by room.
 */
import type { AnyRelation } from './kernel/relation.ts';

/** In the order in which the book meets them. */
const ROOMS = [
  'thread',
  'pair',
  'play',
  'force',
  'spring',
  'holding',
  'contact',
  'built',
  'ways',
  'levelling',
  'calibration',
];

const isRelation = (value: unknown): value is AnyRelation =>
  typeof value === 'object' && value !== null && 'takes' in value && 'gives' in value && 'of' in value;

const collected = (): readonly AnyRelation[] => {
  const files = import.meta.glob<Readonly<Record<string, unknown>>>('./*/*.ts', { eager: true });
  const roomOf = (path: string) => ROOMS.indexOf(path.split('/')[1] ?? '');
  return Object.entries(files)
    .flatMap(([path, exported]) =>
      Object.values(exported)
        .filter(isRelation)
        .map((relation) => ({ room: roomOf(path), relation })),
    )
    .sort((a, b) => a.room - b.room || a.relation.name.localeCompare(b.relation.name, 'en'))
    .map(({ relation }) => relation);
};

export const RELATIONS: readonly AnyRelation[] = /*#__PURE__*/ collected();

const BY_NAME: ReadonlyMap<string, AnyRelation> = /*#__PURE__*/ new Map(
  /*#__PURE__*/ RELATIONS.map((relation) => [relation.name, relation]),
);

export const relationNamed = (name: string): AnyRelation | undefined => BY_NAME.get(name);
