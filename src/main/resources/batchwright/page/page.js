"use strict";
// What every page does: where something is wrong, it is read out first.
(() => {
  const troubles = document.getElementById("troubles");
  if (troubles) {
    troubles.focus();
  }
  // A form is sent once, also when a wet finger hits twice.
  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (form.dataset.sent) {
      event.preventDefault();
    } else if (!form.dataset.again) {
      form.dataset.sent = "yes";
    }
  });
  window.addEventListener("pageshow", () => {
    document.querySelectorAll("form[data-sent]").forEach((form) => delete form.dataset.sent);
  });
})();
