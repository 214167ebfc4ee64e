// Starts the page: makes modules of the texts that the page carries, so that they run from disk where a browser loads no
// files. A module is made when it is first imported; what a text imports is found by the last part of the path.
(() => {
  const made = new Map();
  // Statements only: comments have examples of imports.
  const IMPORT = /((?:^|[;}])\s*(?:import|export)\b[^'";]*?\bfrom\s*)(['"])([^'"]+)\2/gm;
  const alias = { three: 'three.module.min.js' };

  const address = (path) => {
    const name = alias[path] ?? path.slice(path.lastIndexOf('/') + 1);
    if (!made.has(name)) {
      const block = document.querySelector(`script[data-module="${CSS.escape(name)}"]`);
      if (!block) {
        throw new Error(`the page carries no module ${name}`);
      }
      const text = block.textContent.replace(IMPORT, (_, start, quote, other) => `${start}${quote}${address(other)}${quote}`);
      made.set(name, URL.createObjectURL(new Blob([text], { type: 'text/javascript' })));
    }
    return made.get(name);
  };

  const load = async (name) => import(address(name));
  load('main.js').then((main) => main.start(load));
})();
