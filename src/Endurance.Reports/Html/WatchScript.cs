namespace Endurance.Reports.Html;

/// <summary>Loads the page again when its server has another version; place on the page and what is open stay as the browser keeps them.</summary>
internal static class WatchScript
{
    public const string Text = """
        'use strict';
        (function () {
          var watch = document.getElementById('watch'), shown = watch.dataset.version, said = watch.querySelector('p'), text = said.textContent;
          function ask() {
            fetch('/version?shown=' + encodeURIComponent(shown), { cache: 'no-store' }).then(function (answer) {
              if (!answer.ok) throw new Error(answer.status);
              return answer.text();
            }).then(function (version) {
              said.textContent = text;
              if (version.trim() === shown) ask(); else location.reload();
            }).catch(function () {
              said.textContent = 'The watch has ended: what stands here is no longer kept fresh.';
              setTimeout(ask, 2000);
            });
          }
          ask();
        })();
        """;
}
