// Keeps what is typed in this browser. The draft is stored as the page sends it; keys the page has not answered yet are
// stored apart, so that nothing is lost when the program stops in between.

// What this tab alone has typed; two tabs of one house never take each other's words away.
const inTab = {
  get(key) { try { return sessionStorage.getItem(key); } catch { return null; } },
  set(key, text) { try { sessionStorage.setItem(key, text); } catch { /* no room: the page still holds it */ } },
  remove(key) { try { sessionStorage.removeItem(key); } catch { /* nothing was kept */ } },
};

class DraftKeeper extends HTMLElement {
  #key;
  #draft;
  #unsent = new Map();
  #heard = {};
  #ready = false;
  #waiting;

  connectedCallback() {
    for (const name of ['keep', 'state']) {
      if (Object.hasOwn(this, name)) {
        const early = this[name];
        delete this[name];
        this[name] = early;
      }
    }
    if (this.#ready) return;
    this.#ready = true;
    this.onInput = (e) => this.#typed(e);
    document.addEventListener('input', this.onInput, true);
    this.onStorage = (e) => {
      if (e.key === this.#key && e.newValue !== null && e.newValue !== this.#draft) this.dispatchEvent(new CustomEvent('kept-elsewhere', { detail: e.newValue }));
    };
    window.addEventListener('storage', this.onStorage);
    this.#restore();
  }
  disconnectedCallback() {
    document.removeEventListener('input', this.onInput, true);
    window.removeEventListener('storage', this.onStorage);
    this.#ready = false;
  }

  get keep() { return this.#key; }
  set keep(key) { this.#key = key; }
  get state() { return JSON.stringify({ draft: this.#draft, heard: this.#heard }); }
  set state(json) {
    if (!json) return;
    const state = JSON.parse(json);
    this.#heard = state.heard;
    inTab.remove(this.#key + ':aside');
    this.store(state.draft);
  }
  store(text) {
    this.#draft = text;
    try {
      localStorage.setItem(this.#key, text);
      this.#forgetHeard();
      this.#say('Saved ' + new Date().toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' }));
    } catch {
      this.#say('Not saved: the browser has no room');
    }
  }

  #restore() {
    let text = null;
    let unsent = [];
    try {
      text = localStorage.getItem(this.#key);
      unsent = JSON.parse(inTab.get(this.#key + ':unsent') ?? localStorage.getItem(this.#key + ':unsent') ?? '[]');
    } catch { /* storage is closed to us: the page starts empty */ }
    this.dispatchEvent(new CustomEvent('kept', { detail: { text: text ?? '', unsent: JSON.stringify(unsent), aside: inTab.get(this.#key + ':aside') ?? '', units: this.#units() } }));
  }

  #units() {
    document.querySelector('.units select')?.addEventListener('change', (e) => {
      try { localStorage.setItem('longrun-units', e.target.value); } catch { /* asked again next time */ }
    });
    try { return localStorage.getItem('longrun-units') ?? ''; } catch { return ''; }
  }

  #typed(e) {
    const at = e.target.dataset?.at;
    if (at === undefined) return;
    this.#unsent.set(at, e.target.value);
    inTab.set(this.#key + ':unsent', JSON.stringify([...this.#unsent]));
    try { localStorage.setItem(this.#key + ':unsent', JSON.stringify([...this.#unsent])); } catch { /* said by draft */ }
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => { if (this.#unsent.size > 0) this.#say('Kept in this browser'); }, 700);
  }
  // Once the page has heard an entry as it stands, it is in the draft.
  #forgetHeard() {
    for (const [at, value] of this.#unsent) if (this.#heard[at] === value) this.#unsent.delete(at);
    if (this.#unsent.size > 0) return;
    inTab.remove(this.#key + ':unsent');
    localStorage.removeItem(this.#key + ':unsent');
  }
  forget() {
    this.#unsent.clear();
    inTab.remove(this.#key + ':unsent');
    inTab.remove(this.#key + ':aside');
    try { localStorage.removeItem(this.#key + ':unsent'); } catch { /* nothing was kept */ }
  }
  aside(text) { inTab.set(this.#key + ':aside', text); }
  notSaved() { this.#say('Not saved'); this.#draft = undefined; }
  #say(words) {
    const saved = document.querySelector('.saved');
    if (saved && saved.textContent !== words) saved.textContent = words;
  }

  download(name, text) { this.#give(name, new Blob([text], { type: 'application/json' })); }
  downloadZip(name, base64) {
    const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
    this.#give(name, new Blob([bytes], { type: 'application/zip' }));
  }
  #give(name, blob) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(blob);
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
  }
  #openZip(file) {
    const tell = (base64, tooLong) => this.dispatchEvent(new CustomEvent('opened-zip', { detail: { name: file.name, base64, tooLong } }));
    if (file.size > 8 * 1048576) {
      tell('', true);
      return;
    }
    const reader = new FileReader();
    reader.onload = () => tell(reader.result.slice(reader.result.indexOf(',') + 1), false);
    reader.readAsDataURL(file);
  }
  async open(zipsToo) {
    const choose = document.createElement('input');
    choose.type = 'file';
    choose.accept = '.json,application/json' + (zipsToo ? ',.zip,application/zip,.pdf,application/pdf' : '');
    choose.addEventListener('change', async () => {
      const file = choose.files[0];
      if (!file) return;
      if (zipsToo && /\.(zip|pdf)$/i.test(file.name)) {
        this.#openZip(file);
        return;
      }
      const tooLong = file.size > 1048576;
      this.dispatchEvent(new CustomEvent('opened', { detail: { name: file.name, text: tooLong ? '' : await file.text(), tooLong } }));
    });
    choose.click();
  }
}
customElements.define('draft-keeper', DraftKeeper);
