// Light and dark: as the system says until the reader says otherwise.
import { el } from './dom.js';

export function themeSwitch(changed) {
  const dark = window.matchMedia('(prefers-color-scheme: dark)');
  let own = null;
  const button = el('button.plain', { type: 'button', click: () => set(current() === 'dark' ? 'light' : 'dark') });

  const current = () => own ?? (dark.matches ? 'dark' : 'light');
  const apply = () => {
    document.documentElement.dataset.theme = current();
    button.textContent = current() === 'dark' ? 'Light' : 'Dark';
    button.setAttribute('aria-label', `Change to ${current() === 'dark' ? 'light' : 'dark'} colours`);
    changed();
  };
  const set = (theme) => {
    own = theme;
    apply();
  };
  dark.addEventListener('change', apply);
  apply();
  return button;
}
