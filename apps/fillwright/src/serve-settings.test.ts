import { describe, expect, test } from 'vitest';
import { serveSettings } from './serve-settings.ts';

describe('serveSettings', () => {
  test('golden: nothing given is the loopback address and port 4680', () => {
    const usual = { port: 4680, host: '127.0.0.1', names: ['127.0.0.1'], isDemo: false, isLogged: false };
    expect(serveSettings([], {})).toEqual(usual);
    expect(serveSettings([], { PORT: '', HOST: '', FILLWRIGHT_NAMES: '' })).toEqual(usual);
  });
  test('golden: a flag counts before the environment', () => {
    const environment = { PORT: '4700', HOST: '0.0.0.0', FILLWRIGHT_NAMES: 'press.example, line-2' };
    expect(serveSettings(['--port', '0', '--demo', '--log'], environment)).toEqual({
      ...{ port: 0, host: '0.0.0.0', names: ['press.example', 'line-2', '0.0.0.0'], isDemo: true, isLogged: true },
    });
    expect(serveSettings(['--host', '::1'], environment)).toMatchObject({ port: 4700, host: '::1' });
  });
  test.each(['-1', '65536', '80a', '1e3', ' ', '4680.5', '000004680'])('refuses: port "%s"', (port) => {
    expect(serveSettings([`--port=${port}`], {})).toMatchObject({ wrong: [expect.stringMatching(/^--port is /)] });
    expect(serveSettings([], { PORT: port })).toMatchObject({ wrong: [expect.stringMatching(/^PORT is /)] });
  });
  test('refuses: everything that is wrong at once', () => {
    expect(serveSettings(['--host', 'a b', '--prot', '1', 'now'], { PORT: 'x' })).toMatchObject({
      wrong: [
        expect.stringContaining('--port'),
        expect.stringContaining('"1"'),
        expect.stringContaining('"now"'),
        expect.stringContaining('PORT is'),
        expect.stringContaining('--host is'),
      ],
    });
  });
});
