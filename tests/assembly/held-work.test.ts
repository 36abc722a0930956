/** Short work of a figure while a key is held: what was worked stands until the key rests, and is never older than a while. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { heldWork } from '../../widgets/assembly/held-work.ts';
import { good, type Result } from '../../widgets/engine/index.ts';

describe('short work that is asked for again and again', () => {
  beforeEach(() => {
    vi.useFakeTimers();
    vi.stubGlobal('window', globalThis);
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  const asked = () => {
    const held = heldWork<string>();
    const runs: string[] = [];
    const redraw = vi.fn();
    held.when({ isConnected: true } as HTMLElement, { redraw, progress: () => {} });
    const of = (key: string) =>
      held.of(
        key,
        // biome-ignore lint/correctness/useYield: nothing is done in steps here
        function* (): Generator<number, Result<string>, void> {
          runs.push(key);
          return good(key);
        },
        true,
      );
    const value = (key: string) => {
      const result = of(key);
      return result?.ok ? result.value : undefined;
    };
    return { value, runs, redraw };
  };

  it('is worked at once when it is asked alone', () => {
    const { value } = asked();
    expect(value('1')).toBe('1');
    vi.advanceTimersByTime(1000);
    expect(value('2')).toBe('2');
  });

  it('stands as it was in a go, and is worked and drawn once the key rests', () => {
    const { value, runs, redraw } = asked();
    for (const key of ['1', '2', '3']) {
      expect(value(key)).toBe('1');
      vi.advanceTimersByTime(50);
    }
    expect(redraw).not.toHaveBeenCalled();
    vi.advanceTimersByTime(200);
    expect(runs).toEqual(['1', '3']);
    expect(redraw).toHaveBeenCalledTimes(1);
    expect(value('3')).toBe('3');
  });

  it('is worked now and then while a key is held for long', () => {
    const { value, runs } = asked();
    for (let i = 0; i < 40; i++) {
      value(String(i));
      vi.advanceTimersByTime(50);
    }
    expect(runs.length).toBeGreaterThanOrEqual(4);
    expect(runs.length).toBeLessThanOrEqual(6);
  });
});
