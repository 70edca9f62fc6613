import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { desk, launch } from '../../../tools/browser/launch.mjs';
import { serve } from '../../../tools/browser/serve.mjs';

type Server = Awaited<ReturnType<typeof serve>>;

export interface Visit extends BrowserContextOptions {
  /** Path of the first page; left out: the start page. */
  readonly path?: string;
  /** Messages of the console that the test provokes, such as of a server that is down; every other error fails the test. */
  readonly provoked?: RegExp;
}

export interface AtDesk {
  readonly server: () => Server;
  /** Opens a page for a person of their own: other cookies, other storage. */
  readonly visit: (visit?: Visit) => Promise<Page>;
  /** Keeps a brief as a product of its own, for no test may find what another one left. Left out: that of the demo product. */
  readonly product: (text?: string) => Promise<string>;
}

/** The brief of the demo product. */
export const ALDER = example('alder-200');

/** Text of an example. */
export function example(name: string): string {
  return readFileSync(join(import.meta.dirname, '../../../examples', `${name}.brief.yaml`), 'utf8');
}

/**
 * One real server and one browser for a file of tests. A test fails by any error of a page or of its console, and by any
 * request to another host than the server.
 *
 * @param store - `isDemo`: with the demo product; else empty
 * @returns the server, and how to visit it
 */
export function atDesk(store: { readonly isDemo: boolean }): AtDesk {
  let browser: Browser;
  let server: Server;
  const troubles: string[] = [];
  beforeAll(async () => {
    [server, browser] = await Promise.all([serve(store), launch()]);
  });
  afterEach(async () => {
    await Promise.all(browser.contexts().map((context) => context.close()));
    expect(troubles.splice(0)).toEqual([]);
  });
  afterAll(async () => {
    await browser.close();
    await server.close();
  });
  const visit = async ({ path = '', provoked, ...options }: Visit = {}): Promise<Page> => {
    const context = await browser.newContext(desk(options));
    context.setDefaultTimeout(40_000);
    context.on('weberror', (error) => troubles.push(String(error.error())));
    context.on('console', (message) => {
      const text = message.text();
      if (message.type() === 'error' && !provoked?.test(text)) troubles.push(text);
    });
    context.on('request', (request) => {
      if (!request.url().startsWith(server.url) && !/^(?:blob|data):/.test(request.url()))
        troubles.push(`asked ${request.url()}`);
    });
    const page = await context.newPage();
    await page.goto(new URL(path, server.url).href);
    return page;
  };
  let productCount = 0;
  const product = async (text = ALDER): Promise<string> => {
    productCount += 1;
    const id = `product-${String(productCount)}`;
    await server.put(id, text);
    return id;
  };
  return { server: () => server, visit, product };
}
