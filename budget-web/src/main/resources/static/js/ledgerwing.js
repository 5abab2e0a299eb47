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

// else to what the last edit did, else into the form that was opened.
function leadToProblem(part) {
  const place = part.querySelector('[aria-invalid="true"]') || part.querySelector('.impact')
    || part.querySelector('.notice.problem') || part.querySelector('.editing input[type="text"]');
  if (place) {
    place.focus();
  }
}

// Fold an assembly's parts away and back.
document.addEventListener('click', event => {
  const fold = event.target.closest('[data-fold]');
  if (fold) {
    const open = fold.getAttribute('aria-expanded') !== 'true';
    fold.setAttribute('aria-expanded', open);
    fold.closest('tbody').querySelectorAll('tr:not(.group)').forEach(row => { row.hidden = !open; });
  }
});

// A file that the server would refuse is not even sent.
document.addEventListener('change', event => {
  const field = event.target;
  if (field.dataset.mostBytes) {
    const file = field.files[0];
    field.setCustomValidity(file && file.size > Number(field.dataset.mostBytes) ? field.dataset.tooLarge : '');
    field.reportValidity();
  }
});
