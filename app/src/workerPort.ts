/** A worker, from its first message to its end: what it is told, and what it says. */
export type Port<To, From> = {
  post(message: To): void;
  /** Only one listens. */
  listen(heard: (message: From) => void): void;
  end(): void;
};

/** A worker as a port. `broken` is what it is taken to have said where it falls over by itself. */
export const portOf = <To, From>(worker: Worker, broken?: From): Port<To, From> => ({
  post: (message) => worker.postMessage(message),
  listen: (heard) => {
    worker.onmessage = ({ data }: MessageEvent<From>) => heard(data);
    if (broken !== undefined) worker.onerror = () => heard(broken);
  },
  end: () => worker.terminate(),
});
