namespace Endurance.Cli.Tests;

/// <summary>Questions put to a page from inside; each answers with what is wrong, or with nothing.</summary>
internal static class PageProbes
{
    /// <summary>Pairs of labels of a picture whose boxes share more than a pixel, and labels that leave their picture.</summary>
    public const string Overlaps = """
        () => [...document.querySelectorAll('svg.diagram, svg.chart')].map(svg => {
          const frame = svg.getBoundingClientRect();
          const labels = [...svg.querySelectorAll('text')].map(label => [label.firstChild.textContent, label.getBoundingClientRect()]);
          const wrong = labels.filter(([, a]) => a.left < frame.left || a.right > frame.right + 1 || a.top < frame.top - 1 || a.bottom > frame.bottom).map(([text]) => text + ' leaves');
          labels.forEach(([one, a], i) => labels.slice(i + 1).forEach(([other, b]) => {
            if (Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1) wrong.push(one + ' / ' + other);
          }));
          return labels.length ? wrong.join('; ') : 'no label';
        }).filter(wrong => wrong).join(' | ')
        """;

    /// <summary>Texts below 4.5:1, the contrast that WCAG 2.2, 1.4.3 asks of text of any size.</summary>
    public const string FaintText = """
        () => {
          const parts = colour => colour.match(/[\d.]+/g).map(Number);
          const linear = part => (part /= 255) <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
          const luminance = colour => { const [r, g, b] = parts(colour).map(linear); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
          const behind = element => {
            for (; element; element = element.parentElement) {
              const colour = getComputedStyle(element).backgroundColor, alpha = parts(colour)[3];
              if (alpha === undefined || alpha > 0) return colour;
            }
            return 'rgb(255, 255, 255)';
          };
          const faint = new Set();
          document.body.querySelectorAll('*').forEach(element => {
            if (element.tagName === 'SCRIPT' || ![...element.childNodes].some(node => node.nodeType === 3 && node.textContent.trim())) return;
            const style = getComputedStyle(element), ink = element instanceof SVGElement ? style.fill : style.color;
            const [a, b] = [luminance(ink), luminance(behind(element))].sort((x, y) => y - x);
            if ((a + 0.05) / (b + 0.05) < 4.5) faint.add(element.tagName + '.' + element.getAttribute('class') + ' ' + ink);
          });
          return [...faint].join('; ');
        }
        """;
}
