// Small kindnesses. Every page works without this file.
(() => {
  "use strict";

  // An error summary is read first.
  const summary = document.querySelector(".error-summary");
  if (summary) {
    summary.focus();
  }

  // Print buttons exist only where a script can print.
  for (const button of document.querySelectorAll("[data-print]")) {
    button.hidden = false;
    button.addEventListener("click", () => window.print());
  }

  // A sign-in that is about to end can be kept with one press.
  const warning = document.querySelector(".idle-warning");
  if (warning) {
    const minutes = Number(warning.dataset.idleMinutes);
    let timer;
    const start = () => {
      warning.hidden = true;
      clearTimeout(timer);
      timer = setTimeout(() => {
        warning.hidden = false;
      }, (minutes - 5) * 60000);
    };
    warning.querySelector("button").addEventListener("click", async () => {
      const answer = await fetch("/account/still-here", { credentials: "same-origin" });
      if (answer.ok) {
        start();
      } else {
        window.location.reload();
      }
    });
    start();
  }
})();
