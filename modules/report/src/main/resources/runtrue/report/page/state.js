// What the reader has chosen. Parts of the page change it and listen to it; they do not know each other.

export class State extends EventTarget {
  /** Position of the chosen finding, or -1. */
  chosen = -1;
  /** Positions of the findings that pass the filter, in the order shown. */
  shown = [];

  /**
   * Chooses a finding; -1 for none.
   * `by` says which part of the page did it: that part does not bring itself into view.
   */
  choose(index, by) {
    this.chosen = index;
    this.dispatchEvent(new CustomEvent('chosen', { detail: { index, by } }));
  }

  show(indices) {
    this.shown = indices;
    this.dispatchEvent(new CustomEvent('shown'));
  }

  /** Asks for a view, `plan` or `space`, to come forward. */
  bring(view, into = false) {
    this.dispatchEvent(new CustomEvent('bring', { detail: { view, into } }));
  }

  /** Asks the list for findings of one outcome or one plane only. */
  narrow(filter) {
    this.dispatchEvent(new CustomEvent('narrow', { detail: filter }));
  }

  on(event, listener) {
    this.addEventListener(event, (e) => listener(e.detail ?? {}));
  }
}
