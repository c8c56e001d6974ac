// Requests to the bench program.
export function ask(job, what, body, signal, keepalive = false) {
  return fetch(`/job/${job}/sheet/${what}`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body),
    signal,
    keepalive,
  });
}

// Runs the newest of what is handed to it, after a pause: whatever is older is given up.
export class Newest {
  #timer;
  #running;
  constructor(pause, work) {
    this.pause = pause;
    this.work = work;
  }
  ask(value, pause = this.pause) {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(async () => {
      this.#running?.abort();
      const mine = (this.#running = new AbortController());
      try {
        await this.work(value, mine.signal);
      } catch (e) {
        if (e.name !== "AbortError" && !mine.signal.aborted) {
          this.#timer = setTimeout(() => this.ask(value, 0), 1500);
        }
      }
    }, pause);
  }
}
