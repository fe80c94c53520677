// Our own words when the program does not answer; what was typed stays in the browser.
function watchConnection() {
  const state = window.Vaadin?.connectionState;
  if (!state) { setTimeout(watchConnection, 200); return; }
  const show = (now) => {
    const gone = now === 'reconnecting' || now === 'connection-lost';
    if (gone) document.documentElement.dataset.server = 'gone'; else delete document.documentElement.dataset.server;
  };
  state.addStateChangeListener((before, now) => show(now));
  show(state.state);
}
watchConnection();
