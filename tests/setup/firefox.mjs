/** Where Firefox is, and how it is started: by the standard protocol, which a Firefox as it is sold understands. */
export const FIREFOX = process.env.FIREFOX ?? '/usr/bin/firefox-esr';

export const LAUNCH_FIREFOX = {
  channel: 'moz-firefox',
  executablePath: FIREFOX,
  firefoxUserPrefs: {
    // As a reader has it; the driver turns it off, and pages opened as files would pass where they fail.
    'security.fileuri.strict_origin_policy': true,
    'ui.prefersReducedMotion': 1,
  },
};
