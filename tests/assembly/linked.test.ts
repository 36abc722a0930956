/** Quantities that follow one another for as long as a choice says so. */
import { describe, expect, it } from 'vitest';
import { followersOf } from '../../widgets/assembly/linked.ts';

describe('lead errors that are the same on both threads', () => {
  const same = () => 'the same error';

  it('follow whichever is given, and the first leads when the choice is made', () => {
    expect(followersOf('eps_A', same)).toEqual([{ leader: 'eps_A', follower: 'eps_C' }]);
    expect(followersOf('eps_C', same)).toEqual([{ leader: 'eps_C', follower: 'eps_A' }]);
    expect(followersOf('errors', same)).toEqual([{ leader: 'eps_A', follower: 'eps_C' }]);
  });

  it('go their own ways under another choice, and nothing else follows', () => {
    expect(followersOf('eps_A', () => 'two errors')).toEqual([]);
    expect(followersOf('n', same)).toEqual([]);
  });
});
