/** When an exercise comes again: kept in the browser, by days. */
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { dueOn, progress, recordTry } from '../../widgets/client/progress.ts';

const held = new Map<string, string>();
beforeEach(() => {
  held.clear();
  Object.assign(globalThis, {
    localStorage: {
      getItem: (key: string) => held.get(key) ?? null,
      setItem: (key: string, text: string) => held.set(key, text),
      removeItem: (key: string) => held.delete(key),
    },
  });
  return () => {
    Reflect.deleteProperty(globalThis, 'localStorage');
  };
});

describe('what is due', () => {
  it('comes after growing spaces while it is right, and tomorrow once it is wrong', () => {
    let day = 100;
    const spaces: number[] = [];
    for (let i = 0; i < 7; i++) {
      recordTry('pair', true, day);
      let next = day;
      while (!dueOn(next).includes('pair')) next++;
      spaces.push(next - day);
      day = next;
    }
    expect(spaces.every((space, i) => i === 0 || space >= (spaces[i - 1] ?? 0))).toBe(true);
    expect(spaces.at(-1)).toBeGreaterThan(30);
    recordTry('pair', false, day);
    expect(dueOn(day)).toEqual([]);
    expect(dueOn(day + 1)).toEqual(['pair']);
  });

  it('is not pushed further off by solving it many times in a day', () => {
    for (let i = 0; i < 9; i++) recordTry('pair', true, 100);
    expect(dueOn(102)).toEqual(['pair']);
    expect(progress().pair).toMatchObject({ tried: 9, right: 9 });
  });

  it('is not lost where the clock was years ahead at the last try, or is behind or no time at all now', () => {
    recordTry('pair', true, 40_000);
    expect(dueOn(20_000)).toEqual(['pair']);
    recordTry('pair', true, 20_000);
    expect(dueOn(20_000)).toEqual([]);
    expect(dueOn(-700_000)).toEqual(['pair']);
    expect(dueOn(Number.NaN)).toEqual(['pair']);
    recordTry('pair', true, Number.NaN);
    expect(progress().pair).toEqual({ tried: 3, right: 3 });
    expect(dueOn(20_000)).toEqual(['pair']);
  });

  it('goes by the reader’s own midnight, not that of Greenwich', () => {
    vi.stubEnv('TZ', 'America/Chicago');
    vi.useFakeTimers({ toFake: ['Date'] });
    try {
      // Central standard time is six hours behind UTC.
      vi.setSystemTime(Date.UTC(2026, 10, 4, 1));
      recordTry('pair', true);
      vi.setSystemTime(Date.UTC(2026, 10, 4, 5, 59));
      expect(dueOn()).toEqual([]);
      vi.setSystemTime(Date.UTC(2026, 10, 4, 6) + 86_400_000);
      expect(dueOn()).toEqual(['pair']);
    } finally {
      vi.useRealTimers();
      vi.unstubAllEnvs();
    }
  });

  it('takes what an older notebook has kept, and no nonsense', () => {
    held.set('notebook-progress', '{"pair":{"tried":2,"right":1},"odd":{"tried":1,"right":1,"box":-3,"day":"x"}}');
    expect(dueOn(5)).toEqual(['pair', 'odd']);
  });
});
