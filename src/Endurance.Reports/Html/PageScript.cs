namespace Endurance.Reports.Html;

/// <summary>What the page can do beyond being read: sort a table, read a curve. Without it nothing is missing from the text.</summary>
internal static class PageScript
{
    /// <summary>Plain script that asks nothing of any network; the curves carry their data.</summary>
    public const string Text = """
        'use strict';
        (function () {
          function rank(text) {
            if (text === '-' || text === '') return [2, 0, text];
            var more = /^(more than |>\u00a0)/.exec(text), number = /^[-+]?\d+(\.\d+)?/.exec(more ? text.slice(more[0].length) : text);
            return number ? [0, parseFloat(number[0]) + (more ? 1e9 : 0), text] : [1, 0, text];
          }
          function compare(a, b) {
            return a[0] - b[0] || a[1] - b[1] || (a[2] < b[2] ? -1 : a[2] > b[2] ? 1 : 0);
          }
          document.querySelectorAll('table.sorts').forEach(function (table) {
            var heads = Array.from(table.tHead.rows[0].cells), body = table.tBodies[0];
            heads.forEach(function (head, column) {
              var button = document.createElement('button');
              button.type = 'button';
              while (head.firstChild) button.appendChild(head.firstChild);
              head.appendChild(button);
              button.addEventListener('click', function () {
                var falling = head.getAttribute('aria-sort') === 'ascending';
                heads.forEach(function (other) { other.removeAttribute('aria-sort'); });
                head.setAttribute('aria-sort', falling ? 'descending' : 'ascending');
                var rows = Array.from(body.rows).map(function (row, place) {
                  return { row: row, place: place, rank: rank(row.cells[column].textContent.trim()) };
                });
                rows.sort(function (a, b) { return (falling ? -1 : 1) * compare(a.rank, b.rank) || a.place - b.place; });
                rows.forEach(function (item) { body.appendChild(item.row); });
              });
            });
          });
          function at(points, x) {
            var last = points.length - 2;
            if (x < points[0] || x > points[last]) return null;
            var low = 0, high = last / 2;
            while (high - low > 1) { var middle = (low + high) >> 1; if (points[2 * middle] <= x) low = middle; else high = middle; }
            var x0 = points[2 * low], x1 = points[2 * high], y0 = points[2 * low + 1], y1 = points[2 * high + 1];
            return x1 > x0 ? y0 + (y1 - y0) * (x - x0) / (x1 - x0) : y1;
          }
          document.querySelectorAll('figure.reads').forEach(function (figure) {
            var data = JSON.parse(figure.querySelector('script').textContent), svg = figure.querySelector('svg.chart');
            var line = svg.querySelector('.cursor'), read = figure.querySelector('.read'), step = 0;
            function shown(value, log) { return log ? Math.pow(10, value) : value; }
            function tell(x) {
              x = Math.min(Math.max(x, data.low), data.high);
              step = x;
              var px = data.left + (x - data.low) / (data.high - data.low) * (data.right - data.left);
              line.setAttribute('x1', px); line.setAttribute('x2', px); line.setAttribute('visibility', 'visible');
              var parts = data.series.map(function (one) {
                var y = at(one.points, x);
                return one.name + ' ' + (y === null ? 'no value' : shown(y, data.log).toFixed(data.decimals) + ' ' + data.yUnit);
              });
              read.textContent = shown(x, data.log).toFixed(data.log ? 2 : 1) + ' ' + data.xUnit + ': ' + parts.join(', ');
            }
            svg.addEventListener('pointermove', function (event) {
              var box = svg.getBoundingClientRect(), px = (event.clientX - box.left) * svg.viewBox.baseVal.width / box.width;
              tell(data.low + (px - data.left) / (data.right - data.left) * (data.high - data.low));
            });
            svg.addEventListener('keydown', function (event) {
              var by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
              if (by) { event.preventDefault(); tell(step + by * (data.high - data.low) / 200); }
            });
          });
        })();
        """;
}
