namespace ColdSim.Tests.App.Browser;

/// <summary>What is asked of a page inside the browser.</summary>
internal static class PageChecks
{
    /// <summary>Texts and boxes that reach beyond the window, what lies in a part that is scrolled by itself left out.</summary>
    public const string Overflow = """
        () => {
          const wide = document.documentElement.clientWidth, found = [];
          if (document.documentElement.scrollWidth > wide) found.push('the page is ' + document.documentElement.scrollWidth + ' wide');
          for (const e of document.querySelectorAll('body *')) {
            if (e.closest('.wide') && !e.classList.contains('wide') || e.closest('svg.plot') || e.closest('title') || e.tagName === 'SCRIPT') continue;
            const r = e.getBoundingClientRect();
            if (r.width > 0 && (r.right > wide + 1 || r.left < -1)) found.push(e.tagName + '.' + (e.getAttribute('class') || '') + ' ' + Math.round(r.left) + ' to ' + Math.round(r.right) + ': ' + e.textContent.slice(0, 60));
          }
          return found;
        }
        """;

    /// <summary>Texts whose colour is not at least 4.5 times as light or dark as the ground, and lines of pictures not 3 times.</summary>
    public const string Contrast = """
        () => {
          const rgb = c => (c.match(/[\d.]+/g) || [0, 0, 0, 0]).map(Number);
          const light = c => { const [r, g, b] = rgb(c).map(v => v / 255).map(v => v > 0.03928 ? Math.pow((v + 0.055) / 1.055, 2.4) : v / 12.92); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
          const ratio = (a, b) => { const x = light(a), y = light(b); return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05); };
          const ground = getComputedStyle(document.body).backgroundColor, found = new Set();
          for (const e of document.querySelectorAll('h1,h2,p,li,dt,dd,th,td,a,caption,summary,svg text,svg tspan')) {
            const style = getComputedStyle(e), colour = e.closest('svg') ? style.fill : style.color;
            if (ratio(colour, ground) < 4.5) found.add((e.getAttribute('class') || e.tagName) + ' ' + colour + ' on ' + ground);
          }
          for (const e of document.querySelectorAll('svg path[data-name], svg .frame, svg line.grave')) {
            const colour = getComputedStyle(e).stroke;
            if (ratio(colour, ground) < (e.classList.contains('frame') ? 2 : 3)) found.add((e.getAttribute('class') || e.tagName) + ' ' + colour + ' on ' + ground);
          }
          return [...found];
        }
        """;

    /// <summary>What is seen, from top to bottom, without its numbers and places.</summary>
    public const string Seen = """
        () => {
          const lines = [], shown = e => e.getClientRects().length > 0;
          for (const section of document.querySelectorAll('section')) {
            lines.push(section.id);
            for (const e of section.querySelectorAll('p, ul, dl, .wide, figure, summary')) {
              if (!shown(e)) continue;
              const what = e.matches('figure') ? 'picture, ' + e.querySelectorAll('svg.plot').length + ' strips, ' + [...e.querySelectorAll('.clock')].filter(shown).length + ' clock times'
                : e.matches('.wide') ? 'table of ' + e.querySelectorAll('tbody tr').length : e.matches('summary') ? 'closed: ' + e.textContent : e.tagName.toLowerCase();
              lines.push('  ' + what);
            }
          }
          return lines.join('\n') + '\n';
        }
        """;
}
