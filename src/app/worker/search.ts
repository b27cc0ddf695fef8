import { createStore, type Store } from '../store.ts';
import { type Answers, createAnswers } from './answers.ts';
import type { SearchAsk, SearchSent } from './searchMessages.ts';

/** What is looked for. `key` is the text by which two questions are the same. */
export interface Asked<Question> {
  readonly key: string;
  readonly question: Question;
}

/**
 * How the search for what is on screen stands; `best` is the best answer to it that was found.
 * nothing: there is nothing to look for · waiting: until whoever draws pauses · stopped: by the user · stuck: it didn't
 * end in its time and was ended · failed: our own mistake, or the solver didn't come down.
 */
export type Standing<Answer> =
  | { readonly is: 'nothing' }
  | {
      readonly is: 'waiting' | 'searching' | 'stopped' | 'stuck';
      readonly key: string;
      readonly best?: Answer;
    }
  | { readonly is: 'done'; readonly key: string; readonly best: Answer }
  | { readonly is: 'failed'; readonly key: string; readonly best?: Answer; readonly why: string };

/** A worker at the other end of a wire, so that tests can stand in for it. */
export interface SearchWorker<Question> {
  readonly ask: (ask: SearchAsk<Question>) => void;
  readonly terminate: () => void;
}

export type StartSearchWorker<Question, Answer> = (
  onSent: (sent: SearchSent<Answer>) => void,
  onBroken: (why: string) => void,
) => SearchWorker<Question>;

export interface SearchSetup<Question, Answer> {
  readonly start: StartSearchWorker<Question, Answer>;
  /** How long a question must stand before it is looked into, ms. */
  readonly pause: number;
  /** How long a search may take, seconds. */
  readonly seconds: number;
  /** How much longer it is waited for before its worker is ended, ms: it has to come down and to unpack. */
  readonly grace: number;
}

export interface Search<Question, Answer> {
  readonly standing: Store<Standing<Answer>>;
  /** Newest wins. The same question again costs one comparison of keys. */
  readonly want: (asked: Asked<Question> | null) => void;
  /** While held, no search is started; one that runs goes on. */
  readonly hold: (held: boolean) => void;
  /** Leave it at what was found. */
  readonly stop: () => void;
  /** Look once more, at once. */
  readonly again: () => void;
  readonly end: () => void;
}

const KEPT = 20;

/**
 * Looks for one kind of answer in a worker of its own, one question at a time. A search runs to its end in one go, so it
 * is ended with its worker, and only once a newer question has stood for the pause: whoever comes back to the question
 * before (a drag broken off, a step of undo) finds its search still running, or its answer kept.
 */
export function createSearch<Question, Answer>(
  setup: SearchSetup<Question, Answer>,
): Search<Question, Answer> {
  const standing = createStore<Standing<Answer>>({ is: 'nothing' });
  const answers: Answers<Answer> = createAnswers(KEPT);
  let wanted: Asked<Question> | null = null;
  let running: { readonly id: number; readonly key: string } | null = null;
  let worker: SearchWorker<Question> | null = null;
  let held = false;
  let pause: ReturnType<typeof setTimeout> | undefined;
  let watchdog: ReturnType<typeof setTimeout> | undefined;
  let lastId = 0;

  function show(next: Standing<Answer>) {
    standing.set(() => next);
  }

  function best(key: string): { readonly best?: Answer } {
    const found = answers.of(key)?.best;
    return found === undefined ? {} : { best: found };
  }

  /** The worker is ended in the middle of what it does; what it found so far is kept. */
  function breakOff() {
    clearTimeout(watchdog);
    running = null;
    worker?.terminate();
    worker = null;
  }

  function begin({ key, question }: Asked<Question>) {
    lastId += 1;
    const id = lastId;
    running = { id, key };
    show({ is: 'searching', key, ...best(key) });
    try {
      worker ??= setup.start(take, fail);
      worker.ask({ id, question, seconds: setup.seconds });
    } catch (error) {
      fail(error instanceof Error ? error.message : String(error));
      return;
    }
    watchdog = setTimeout(
      () => {
        breakOff();
        if (wanted?.key === key) show({ is: 'stuck', key, ...best(key) });
      },
      setup.seconds * 1000 + setup.grace,
    );
  }

  function fail(why: string) {
    const key = running?.key;
    breakOff();
    if (key !== undefined && wanted?.key === key) show({ is: 'failed', key, ...best(key), why });
  }

  function take(sent: SearchSent<Answer>) {
    if (sent.id !== running?.id) return;
    const { key } = running;
    const onScreen = wanted?.key === key;
    if ('failed' in sent) {
      // A solver that failed once is not asked again: the next question gets a fresh one.
      fail(sent.failed);
    } else if ('better' in sent) {
      answers.remember({ key, best: sent.better, is: 'open' });
      if (onScreen) show({ is: 'searching', key, best: sent.better });
    } else {
      clearTimeout(watchdog);
      running = null;
      answers.remember({ key, best: sent.done, is: 'done' });
      if (onScreen) show({ is: 'done', key, best: sent.done });
    }
  }

  /** Starts the pause again, when there is something that a pause would change. */
  function wait() {
    clearTimeout(pause);
    const idle = standing.get().is === 'waiting' || (wanted === null && running !== null);
    if (held || !idle) return;
    pause = setTimeout(() => {
      if (running) breakOff();
      if (wanted) begin(wanted);
    }, setup.pause);
  }

  return {
    standing,
    want: (asked) => {
      if (asked?.key === wanted?.key) return;
      wanted = asked;
      show(standingOf(asked));
      wait();
    },
    hold: (next) => {
      if (next === held) return;
      held = next;
      wait();
    },
    stop: () => {
      const { is } = standing.get();
      if (!wanted || (is !== 'waiting' && is !== 'searching')) return;
      const { key } = wanted;
      clearTimeout(pause);
      if (running?.key === key) breakOff();
      answers.remember({ key, ...best(key), is: 'stopped' });
      show({ is: 'stopped', key, ...best(key) });
    },
    again: () => {
      if (!wanted || running?.key === wanted.key) return;
      clearTimeout(pause);
      if (running) breakOff();
      begin(wanted);
    },
    end: () => {
      clearTimeout(pause);
      wanted = null;
      breakOff();
      show({ is: 'nothing' });
    },
  };

  function standingOf(asked: Asked<Question> | null): Standing<Answer> {
    if (!asked) return { is: 'nothing' };
    const { key } = asked;
    if (running?.key === key) return { is: 'searching', key, ...best(key) };
    const known = answers.of(key);
    if (known?.is === 'done' && known.best !== undefined) {
      return { is: 'done', key, best: known.best };
    }
    return { is: known?.is === 'stopped' ? 'stopped' : 'waiting', key, ...best(key) };
  }
}
