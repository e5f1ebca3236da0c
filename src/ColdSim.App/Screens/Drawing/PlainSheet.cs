namespace ColdSim.App.Screens.Drawing;

/// <summary>A sheet in the characters that every terminal has, those of ASCII, with the same meaning in the same places.</summary>
internal static class PlainSheet
{
    private const char Unknown = '?';

    // Those with a mark, from À on, without it.
    private const string LatinLetters = "AAAAAAACEEEEIIIIDNOOOOOxOUUUUYTsaaaaaaaceeeeiiiidnooooo/ouuuuyty";

    /// <summary>The sheet with each glyph replaced that is not of ASCII.</summary>
    public static Sheet Of(Sheet sheet)
    {
        Sheet plain = new(sheet.Width, sheet.Height) { LastRowContinues = sheet.LastRowContinues };
        for (int y = 0; y < sheet.Height; y++)
        {
            for (int x = 0; x < sheet.Width; x++)
            {
                Cell cell = sheet[x, y];
                plain.Put(x, y, cell.Plain != '\0' ? cell.Plain : Of(cell.Glyph), cell.Style);
            }

            DegreesTogether(sheet, plain, y);
        }

        return plain;
    }

    /// <summary>What stands for a glyph.</summary>
    public static char Of(char glyph) => glyph switch
    {
        < '\u0080' => glyph,
        '│' or '┊' or '║' => '|',
        '─' or '━' or '–' or '—' or '−' => '-',
        '╌' => '_',
        '┐' or '┘' or '┌' or '└' or '├' or '┤' or '┬' or '┴' or '┼' => '+',
        '╵' or '↑' or '▲' => '^',
        '↓' or '▼' => 'v',
        '←' => '<',
        '→' or '›' => '>',
        '…' => '~',
        '°' or '\u00a0' or '\u2800' => ' ',
        '²' => '2',
        '³' => '3',
        '×' => 'x',
        '·' or '∙' => '.',
        '•' => '*',
        '“' or '”' => '"',
        '‘' or '’' => '\'',
        > '\u2800' and <= '\u28ff' => '*',
        _ => Letter(glyph),
    };

    /// <summary>Moves the letter of a degree unit up to its number where a blank follows, so that "80 °F" becomes "80 F ".</summary>
    private static void DegreesTogether(Sheet sheet, Sheet plain, int y)
    {
        for (int x = 0; x + 1 < sheet.Width; x++)
        {
            if (sheet[x, y].Glyph != '°' || x + 2 < sheet.Width && sheet[x + 2, y].Glyph != ' ')
                continue;
            plain.Put(x, y, plain[x + 1, y].Glyph, sheet[x, y].Style);
            plain.Put(x + 1, y, ' ', sheet[x, y].Style);
        }
    }

    private static char Letter(char glyph)
        => glyph is >= 'À' and <= 'ÿ' ? LatinLetters[glyph - 'À'] : Unknown;
}
