/**
 * The folded fields of a figure. A shut group says in one line what its fields hold; it opens by itself where a number in it is
 * refused, so that the reason stands in view. A field that changes nothing, as the others stand, is not shown.
 */
import { GROUPS, type GroupName, openedFor } from '#words/figures/groups.ts';
import type { Input } from '../assembly/numbers.ts';
import { groupState } from '../figures/kit/group-state.ts';
import { all, setText } from './dom.ts';
import type { Store } from './store.ts';

export interface Folds {
  /** Told which fields are idle now. */
  readonly idle: (names: readonly string[]) => void;
}

interface Group {
  readonly fold: HTMLDetailsElement;
  readonly name: GroupName;
  readonly inputs: readonly Input[];
}

/**
 * Marks a figure while its fields are used, so that its picture can stay in view. A finger that taps a button does not focus it
 * in every browser, so that both are heard.
 */
const markUse = (figure: HTMLElement, until: AbortSignal): void => {
  const stage = figure.querySelector<HTMLElement>('[data-stage]');
  const hear = (event: Event) => {
    const target = event.target instanceof Element && figure.contains(event.target) ? event.target : undefined;
    // A picture that stays is not let go under the finger that takes a handle on it.
    const used = figure.matches('.in-use') ? '[data-inputs], [data-stage]' : '[data-inputs]';
    const inside = Boolean(target?.closest(used));
    if (inside && stage) figure.style.setProperty('--stage-height', `${stage.offsetHeight}px`);
    figure.classList.toggle('in-use', inside);
  };
  for (const name of ['focusin', 'pointerdown']) document.addEventListener(name, hear, { signal: until });
};

export const mountFolds = (
  figure: HTMLElement,
  store: Store,
  announce: (text: string) => void,
  until: AbortSignal,
): Folds => {
  markUse(figure, until);
  const set = figure.dataset.set ?? '';
  const groups = all(figure, 'details.group').map((fold): Group => {
    const names = fold.querySelector<HTMLElement>('[data-inputs]')?.dataset.names?.split(' ') ?? [];
    const inputs = store.sets.get(set)?.inputs ?? [];
    return {
      fold: fold as HTMLDetailsElement,
      name: fold.dataset.group as GroupName,
      inputs: names.flatMap((name) => inputs.find((input) => input.name === name) ?? []),
    };
  });
  let idle = (figure.dataset.idle ?? '').split(' ');
  const shown = ({ inputs }: Group) => inputs.filter(({ name }) => !idle.includes(name));

  let told: readonly unknown[][] = [];
  const tell = () => {
    const view = store.view();
    const now = groups.map((group) => [view, ...shown(group).map(({ name }) => store.field(set, name)?.value)]);
    for (const [i, group] of groups.entries()) {
      if (told[i]?.length === now[i]?.length && told[i]?.every((value, k) => value === now[i]?.[k])) continue;
      const held = shown(group).flatMap((input) => {
        const value = store.field(set, input.name)?.value;
        return value === undefined ? [] : [[input, value] as const];
      });
      setText(group.fold.querySelector('[data-state]'), groupState(held, view));
    }
    told = now;
  };
  const hide = () => {
    for (const field of all(figure, '[data-field]')) field.hidden = idle.includes(field.dataset.field ?? '');
    for (const group of groups) group.fold.hidden = shown(group).length === 0;
  };
  /** The reader may type in a group and shut it; what is refused from elsewhere opens it. */
  const openRefused = () => {
    for (const group of groups) {
      if (group.fold.open) continue;
      const reasons = shown(group).flatMap(({ name }) => store.field(set, name)?.reason ?? []);
      const [reason] = reasons;
      // Once for a reason: whoever shuts it again has read it.
      if (reason === undefined || group.fold.dataset.openedFor === reason) {
        if (reason === undefined) delete group.fold.dataset.openedFor;
        continue;
      }
      group.fold.dataset.openedFor = reason;
      group.fold.open = true;
      announce(openedFor(GROUPS[group.name], reason));
    }
  };
  const refresh = () => {
    tell();
    openRefused();
  };
  hide();
  refresh();
  store.onDrawn((sets, view) => {
    if (view || sets.has(set)) refresh();
  });
  return {
    idle: (names) => {
      if (names.join(' ') === idle.join(' ')) return;
      idle = [...names];
      hide();
      refresh();
    },
  };
};
