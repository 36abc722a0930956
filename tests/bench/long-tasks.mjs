/**
 * Tasks that held the page for longer than 50 ms. One that other programs interrupt is long by the clock though the page did
 * little in it, so each has its processor time beside it.
 */
const LONG = 50;

/** Watches until the function it gives is called, which gives the long tasks met. */
export const longTasks = async (client) => {
  const long = [];
  const gather = ({ value }) => {
    for (const { name, dur = 0, tdur = 0 } of value)
      if (name === 'RunTask' && dur > 1000 * LONG) long.push({ clock: dur / 1000, busy: tdur / 1000 });
  };
  client.on('Tracing.dataCollected', gather);
  await client.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['disabled-by-default-devtools.timeline'] },
  });
  return async () => {
    const complete = new Promise((done) => client.once('Tracing.tracingComplete', done));
    await client.send('Tracing.end');
    await complete;
    client.off('Tracing.dataCollected', gather);
    return long;
  };
};

export const longText = (tasks) => {
  const busy = tasks.map((task) => task.busy);
  return `${tasks.length} by the clock, ${busy.filter((ms) => ms > LONG).length} by processor, longest ${Math.max(0, ...busy).toFixed(0)} ms`;
};
