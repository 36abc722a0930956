/** Where Chromium is, and how it is started where there is no desktop and no network. */
export const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';

export const LAUNCH = {
  executablePath: CHROMIUM,
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};
