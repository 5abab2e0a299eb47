// The little the pages need beside htmx. Every form also works without it.

// Requests made by htmx carry the token against forged posts in a header.
document.addEventListener('htmx:configRequest', event => {
  const token = document.querySelector('meta[name="csrf-token"]');
  if (token) {
    event.detail.headers['X-CSRF-TOKEN'] = token.content;
  }
});

// No network, no answer: say so; the page keeps what was typed.
document.addEventListener('htmx:sendError', () => showNoAnswer(true));
document.addEventListener('htmx:beforeRequest', () => showNoAnswer(false));

function showNoAnswer(shown) {
  document.getElementById('no-answer').hidden = !shown;
}

// Lead to the first field that needs another look.
document.addEventListener('DOMContentLoaded', () => leadToProblem(document));
document.addEventListener('htmx:afterSettle', event => leadToProblem(event.target));

function leadToProblem(part) {
  const field = part.querySelector('[aria-invalid="true"]');
  if (field) {
    field.focus();
  }
}
