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

  // How far somebody has read is kept as they read; without a script they keep it by a form.
  const keeper = document.querySelector("[data-keep-place]");
  if (keeper) {
    const headings = [...document.querySelectorAll(".lesson-body h2[id]")];
    let kept = "";
    let waiting;
    const keep = async () => {
      const seen = headings.filter((one) => one.getBoundingClientRect().top < window.innerHeight * 0.6).pop();
      if (!seen || seen.id === kept) {
        return;
      }
      kept = seen.id;
      const form = new URLSearchParams(new FormData(keeper));
      form.set("anchor", kept);
      form.set("quiet", "yes");
      const answer = await fetch(keeper.action, { method: "POST", body: form, credentials: "same-origin" }).catch(() => null);
      keeper.hidden = answer !== null && answer.ok;
    };
    keeper.hidden = true;
    window.addEventListener(
      "scroll",
      () => {
        clearTimeout(waiting);
        waiting = setTimeout(keep, 1000);
      },
      { passive: true },
    );
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
