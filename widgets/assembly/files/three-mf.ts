/**
 * 3MF (ISO/IEC 25422, core specification 1.4): a zip of three parts, the content types, the one relationship that points to the model, and the model, with its
 * unit in it. Every edge of the mesh is in two triangles, in opposite directions; right-handed, z up.
 */
import { LANGUAGE } from '#words/language.ts';
import { xmlText } from '../../input/escape.ts';
import type { Mesh } from '../adjuster/solid.ts';
import { zipped } from './zipped.ts';

const DECLARED = '<?xml version="1.0" encoding="UTF-8"?>\n';
const TYPES = `${DECLARED}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>`;
const RELATIONSHIPS = `${DECLARED}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="model" Target="/3D/3dmodel.model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>`;

/** A hundredth of a micrometre is finer than any printer. */
const numeral = (x: number): string => String(Number(x.toFixed(5)) + 0);

export interface Body {
  readonly name: string;
  readonly mesh: Mesh;
}

export const modelXml = (bodies: readonly Body[]): string => {
  const objects = bodies.map(({ name, mesh: { positions, triangles } }, i) => {
    let vertices = '';
    for (let v = 0; v < positions.length; v += 3)
      vertices += `<vertex x="${numeral(positions[v] as number)}" y="${numeral(positions[v + 1] as number)}" z="${numeral(positions[v + 2] as number)}"/>`;
    let faces = '';
    for (let t = 0; t < triangles.length; t += 3)
      faces += `<triangle v1="${triangles[t]}" v2="${triangles[t + 1]}" v3="${triangles[t + 2]}"/>`;
    return `<object id="${i + 1}" type="model" name="${xmlText(name)}"><mesh><vertices>${vertices}</vertices><triangles>${faces}</triangles></mesh></object>`;
  });
  const items = bodies.map((_, i) => `<item objectid="${i + 1}"/>`);
  return `${DECLARED}<model unit="millimeter" xml:lang="${LANGUAGE}" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02"><resources>${objects.join('')}</resources><build>${items.join('')}</build></model>`;
};

export const threeMfOf = (bodies: readonly Body[]): Uint8Array<ArrayBuffer> =>
  zipped({
    '[Content_Types].xml': TYPES,
    '_rels/.rels': RELATIONSHIPS,
    '3D/3dmodel.model': modelXml(bodies),
  });
