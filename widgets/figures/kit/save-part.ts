/** A printed part handed to the reader in each form, from one net and one set of outlines; both are made when they are asked for. */
import type { Mesh } from '../../assembly/adjuster/solid.ts';
import { fileName } from '../../assembly/files/file-name.ts';
import { dxfOf, type Outline, svgOf } from '../../assembly/files/outline-files.ts';
import { stlOf } from '../../assembly/files/stl.ts';
import { threeMfOf } from '../../assembly/files/three-mf.ts';
import { escapeText } from '../../input/escape.ts';
import { saveFile } from './save.ts';

export interface SavedPart {
  readonly name: string;
  /** Words of the file’s name. */
  readonly called: readonly string[];
  readonly mesh: () => Mesh;
  readonly outlines: () => readonly Outline[];
}

const SAVED = ['3mf', 'stl', 'dxf', 'svg'] as const;

/** A button for each form; `key` is the part’s own on its page. */
export const saveButtons = (key: string, words: (kind: string) => string): string =>
  SAVED.map(
    (kind) =>
      `<button type="button" class="plain" data-save="${kind}" data-of="${key}" data-key="save-${key}-${kind}" aria-label="${escapeText(words(kind))}">${kind.toUpperCase()}</button>`,
  ).join(' ');

export const savePart = (kind: string, { name, called, mesh, outlines }: SavedPart, check: string): void => {
  const file = fileName(called, kind);
  if (kind === 'dxf') saveFile(dxfOf(outlines(), check), file, 'image/vnd.dxf');
  else if (kind === 'svg') saveFile(svgOf(outlines(), name, check), file, 'image/svg+xml');
  else if (kind === 'stl') saveFile(stlOf(mesh()), file, 'model/stl');
  else if (kind === '3mf') saveFile(threeMfOf([{ name, mesh: mesh() }]), file, 'model/3mf');
};

/** Calls `save` with the form and the part that a button of the stage stands for. */
export const onSave = (stage: HTMLElement, save: (kind: string, of: string) => void): void => {
  stage.addEventListener('click', (event) => {
    const button = event.target instanceof Element ? event.target.closest('[data-save]') : null;
    if (button) save(button.getAttribute('data-save') ?? '', button.getAttribute('data-of') ?? '');
  });
};
