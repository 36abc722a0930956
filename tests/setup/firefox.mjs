/** Where Firefox is, and how it is started: by the standard protocol, which a Firefox as it is sold understands. */
export const FIREFOX = process.env.FIREFOX ?? '/usr/bin/firefox-esr';

/** For a reader who wants no motion, and a dark page or colours of their own if told. */
export const firefoxFor = ({ dark, forced }) => ({
  channel: 'moz-firefox',
  executablePath: FIREFOX,
  firefoxUserPrefs: {
    // As a reader has it; the driver turns it off, and pages opened as files would pass where they fail.
    'security.fileuri.strict_origin_policy': true,
    // The driver waits in vain for a page that was kept when the reader left it.
    'browser.sessionhistory.max_total_viewers': 0,
    'ui.prefersReducedMotion': 1,
    'layout.css.prefers-color-scheme.content-override': dark ? 0 : 1,
    'browser.display.document_color_use': forced ? 2 : 1,
  },
});
