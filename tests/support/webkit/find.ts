/** Where a locator leads, worked out in the page. `find` is sent there as text, so it leans on nothing outside itself. */
import type { Role } from '../driven.ts';

/** Text or a pattern, as it can be sent. */
export interface Wanted {
  readonly text?: string;
  readonly source?: string;
  readonly flags?: string;
  readonly exact?: boolean;
}

export type Step =
  | { readonly by: 'css'; readonly path: string }
  | { readonly by: 'xpath'; readonly path: string }
  | { readonly by: 'role'; readonly role: Role; readonly name?: Wanted }
  | { readonly by: 'label'; readonly wanted: Wanted }
  | { readonly by: 'text'; readonly wanted: Wanted }
  | { readonly by: 'hasText'; readonly wanted: Wanted }
  | { readonly by: 'visible' }
  | { readonly by: 'nth'; readonly index: number }
  | { readonly by: 'and'; readonly steps: readonly Step[] };

/** The elements that the steps lead to from the document, in its order. */
export const find = (steps: readonly Step[]): Element[] => {
  const plain = (text: string | null | undefined) => (text ?? '').replace(/\s+/g, ' ').trim();
  const matches = (text: string, wanted: Wanted): boolean => {
    if (wanted.source !== undefined) return new RegExp(wanted.source, wanted.flags).test(text);
    const asked = plain(wanted.text);
    return wanted.exact ? text === asked : text.toLowerCase().includes(asked.toLowerCase());
  };
  const visible = (e: Element): boolean => {
    const box = e.getBoundingClientRect();
    return box.width > 0 && box.height > 0 && e.checkVisibility({ visibilityProperty: true });
  };
  const labelled = (e: Element): string[] => {
    const by = (e.getAttribute('aria-labelledby') ?? '').split(/\s+/).filter((id) => id !== '');
    if (by.length > 0) return [by.map((id) => plain(document.getElementById(id)?.textContent)).join(' ')];
    const own = e.getAttribute('aria-label');
    if (own !== null) return [plain(own)];
    return [...((e as HTMLInputElement).labels ?? [])].map((label) => plain(label.textContent));
  };
  const ROLES: Record<Role, string> = {
    button: 'button, input[type=button], input[type=submit], [role=button]',
    link: 'a[href], [role=link]',
    radio: 'input[type=radio], [role=radio]',
    slider: 'input[type=range], [role=slider]',
  };
  const named = (e: Element, wanted: Wanted | undefined): boolean => {
    if (!wanted) return true;
    const labels = labelled(e);
    return (labels.length > 0 ? labels : [plain(e.textContent) || plain(e.getAttribute('title'))]).some((text) =>
      matches(text, wanted),
    );
  };
  const queried = (from: readonly Node[], css: string): Element[] => {
    const inside = new Set(from.flatMap((node) => [...(node as ParentNode).querySelectorAll(css)]));
    return [...document.querySelectorAll(css)].filter((e) => inside.has(e));
  };
  const styled = (from: readonly Node[], css: string): Element[] => {
    if (!css.includes(':visible')) return queried(from, css);
    const shown = css
      .split(',')
      .filter((part) => part.includes(':visible'))
      .map((part) => part.replace(':visible', ''))
      .join(',');
    return queried(from, css.replaceAll(':visible', '')).filter((e) => !e.matches(shown) || visible(e));
  };
  const byXpath = (from: readonly Node[], path: string): Element[] =>
    from.flatMap((node) => {
      const result = document.evaluate(path, node, null, XPathResult.ORDERED_NODE_SNAPSHOT_TYPE, null);
      return Array.from({ length: result.snapshotLength }, (_, i) => result.snapshotItem(i) as Element);
    });
  const withText = (e: Element, wanted: Wanted): boolean =>
    !e.closest('script, style') &&
    matches(plain(e.textContent), wanted) &&
    ![...e.children].some((child) => matches(plain(child.textContent), wanted));
  let found: Node[] = [document];
  for (const step of steps) {
    if (step.by === 'css') found = styled(found, step.path);
    else if (step.by === 'xpath') found = byXpath(found, step.path);
    else if (step.by === 'role')
      found = queried(found, ROLES[step.role]).filter((e) => named(e, step.name) && e.checkVisibility());
    else if (step.by === 'label')
      found = queried(found, '*').filter((e) => labelled(e).some((text) => matches(text, step.wanted)));
    else if (step.by === 'text') found = queried(found, '*').filter((e) => withText(e, step.wanted));
    else if (step.by === 'hasText') found = found.filter((e) => matches(plain(e.textContent), step.wanted));
    else if (step.by === 'visible') found = found.filter((e) => visible(e as Element));
    else if (step.by === 'and') {
      const both = new Set<Node>(find(step.steps));
      found = found.filter((e) => both.has(e));
    } else {
      const one = found[step.index < 0 ? found.length + step.index : step.index];
      found = one ? [one] : [];
    }
  }
  return found as Element[];
};
