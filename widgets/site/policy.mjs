/**
 * What a page may load and run (Content Security Policy Level 3, W3C), as a `meta` element, since a folder of pages has no server
 * to say it in a header: what came with the page, and nothing else. No script runs that stands in the page itself, so text that was
 * meant to be harmless and was not stays text. Attributes of style are let through: algebra and drawings are set with them, and they
 * load nothing, since every other rule holds for them too.
 */
import { createHash } from 'node:crypto';

const policy = (rules) =>
  `<meta http-equiv="Content-Security-Policy" content="${Object.entries({
    'default-src': "'none'",
    ...rules,
    'style-src-attr': "'unsafe-inline'",
    'base-uri': "'none'",
    'form-action': "'none'",
  })
    .map(([name, sources]) => `${name} ${sources}`)
    .join('; ')}">`;

const hashOf = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/**
 * For a page beside its files, with the styles of these very texts in it. Browsers before 2022 do not know the two kinds of
 * `style-src-…` and fall back on the first.
 */
export const pagePolicy = (styles) =>
  policy({
    'script-src': "'self'",
    'worker-src': "'self'",
    'style-src': "'self' 'unsafe-inline'",
    'style-src-elem': ["'self'", ...styles.map(hashOf)].join(' '),
    'font-src': "'self'",
    'img-src': "'self'",
  });

/** For the page that holds all within itself: the scripts and styles with these very texts. */
export const oneFilePolicy = (scripts, styles) =>
  policy({
    'script-src': scripts.map(hashOf).join(' '),
    'style-src': "'unsafe-inline'",
    'style-src-elem': styles.map(hashOf).join(' '),
    'font-src': 'data:',
    'img-src': 'data:',
  });
