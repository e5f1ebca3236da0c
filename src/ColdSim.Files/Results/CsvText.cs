namespace ColdSim.Files.Results;

/// <summary>Text for a cell of a CSV that a spreadsheet may open.</summary>
internal static class CsvText
{
    /// <summary>
    /// The text, visible, behind an apostrophe where its beginning would make it a formula. Quotation marks do not keep a spreadsheet from running it.
    /// Cells with numbers do not come here: a minus sign is no formula.
    /// </summary>
    public static string Of(string text) => text.Length > 0 && BeginsFormula(text[0]) ? "'" + VisibleText.Of(text) : VisibleText.Of(text);

    // A tab or a carriage return before the sign is dropped by some programs, and so are the wide forms of the signs taken for them.
    private static bool BeginsFormula(char first) => first is '=' or '+' or '-' or '@' or '\t' or '\r' or '＝' or '＋' or '－' or '＠';
}
