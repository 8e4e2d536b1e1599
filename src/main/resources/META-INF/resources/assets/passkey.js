// Passkeys: has the browser sign the server's challenge and sends the answer back. Serves every element that carries
// data-passkey="sign-in" or "register"; its first button starts, its hidden alert is shown when it did not work, and
// its hidden status, where there is one, when it did.
(() => {
  const post = async (url, body) => {
    const meta = (name) => document.querySelector(`meta[name="${name}"]`).content;
    const headers = { 'Content-Type': 'application/json', [meta('_csrf_header')]: meta('_csrf') };
    const response = await fetch(url, { method: 'POST', headers, body: body && JSON.stringify(body) });
    if (!response.ok) {
      throw new Error(`HTTP ${response.status}`);
    }
    return response.json();
  };

  const signIn = async () => {
    const options = await post('webauthn/authenticate/options');
    const publicKey = PublicKeyCredential.parseRequestOptionsFromJSON(options);
    const credential = await navigator.credentials.get({ publicKey });
    const answer = await post('login/webauthn', credential.toJSON());
    window.location.assign(answer.redirectUrl);
  };

  const register = async () => {
    const options = await post('webauthn/register/options');
    const publicKey = PublicKeyCredential.parseCreationOptionsFromJSON(options);
    const created = await navigator.credentials.create({ publicKey });
    const label = new Date().toISOString().slice(0, 10);
    await post('webauthn/register', { publicKey: { credential: created.toJSON(), label } });
  };

  const deeds = { 'sign-in': signIn, register };

  document.addEventListener('click', async (event) => {
    const place = event.target.closest?.('[data-passkey] vaadin-button')?.closest('[data-passkey]');
    if (!place) {
      return;
    }
    const show = (role, shown) => place.querySelector(`[role=${role}]`)?.toggleAttribute('hidden', !shown);
    show('alert', false);
    show('status', false);
    try {
      await deeds[place.dataset.passkey]();
      show('status', true);
    } catch (error) {
      console.warn(`passkey: ${error.name}`);
      show('alert', true);
    }
  });
})();
