/**
 * Firefox writes each answer of its protocol in two pieces and holds the second until the first is acknowledged (Nagle’s rule,
 * RFC 896), which the system puts off by 40 ms (RFC 1122, 4.2.3.2) unless there is something to send. So every piece is answered
 * with the least thing there is to send, a pong that nobody asked for (RFC 6455, 5.5.3): a suite takes half the time.
 */
import { subscribe } from 'node:diagnostics_channel';
import type { Socket } from 'node:net';

/** Final, pong; masked, one byte long; the mask, not nought, which Firefox does not take; the byte. */
const PONG = Buffer.from([0x8a, 0x81, 1, 2, 3, 4, 5]);

let told = false;

/** From now on, for every connection of this process that becomes a web socket; files that share it tell it so once. */
export const acknowledgeAtOnce = (): void => {
  if (told) return;
  told = true;
  subscribe('net.client.socket', (message) => {
    const { socket } = message as { socket: Socket };
    let upgraded: boolean | undefined;
    socket.on('data', (bytes) => {
      if (upgraded) socket.write(PONG);
      upgraded ??= bytes.toString('latin1', 0, 12) === 'HTTP/1.1 101';
    });
  });
};
