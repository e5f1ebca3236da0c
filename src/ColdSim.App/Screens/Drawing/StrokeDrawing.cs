using ColdSim.App.Text;

namespace ColdSim.App.Screens.Drawing;

/// <summary>Draws curves and what is between them into dots.</summary>
internal static class StrokeDrawing
{
    /// <summary>Three cells that show a stroke.</summary>
    public static string Key(Stroke stroke) => stroke switch
    {
        Stroke.Line => "⠒⠒⠒",
        Stroke.Dashes => "⠒ ⠒",
        Stroke.Dots => "⠂⠂⠂",
        _ => "⠡⠡⠡",
    };

    /// <summary>What stands for a cell of a stroke where only plain characters are.</summary>
    public static char Plain(Stroke stroke) => stroke switch
    {
        Stroke.Line => '*',
        Stroke.Dashes => '-',
        Stroke.Dots => '.',
        _ => ':',
    };

    /// <summary>Draws a curve.</summary>
    public static void DrawCurve(DotGrid grid, ReadOnlySpan<Extent> columns, ValueAxis axis, Stroke stroke)
    {
        (double Low, double High)? before = null;
        for (int c = 0; c < columns.Length; c++)
        {
            if (columns[c].IsNone)
            {
                before = null;
                continue;
            }

            (double Low, double High) now = (axis.Dot(columns[c].Low, grid.Dots), axis.Dot(columns[c].High, grid.Dots));
            if (stroke == Stroke.Band)
                Speckle(grid, c, now.High, now.Low);
            else if (stroke == Stroke.Dots)
                Dot(grid, c, now);
            else if (stroke == Stroke.Line || c / 2 % 2 == 0)
                Upright(grid, c, Joined(now, before));
            before = now;
        }
    }

    /// <summary>Sets every fourth dot down from the top, one column shifted against the next, so that no two make a line.</summary>
    public static void Speckle(DotGrid grid, int column, double high, double low)
    {
        int top = (int)Math.Clamp(high, -1, grid.Dots - 1), bottom = (int)Math.Clamp(low, 0, grid.Dots);
        for (int dot = top - column % 2 * 2; dot >= bottom && top > 0; dot -= 4)
            grid.Set(column, dot);
    }

    /// <summary>Sets every dot of a column between two.</summary>
    public static void Upright(DotGrid grid, int column, (double Low, double High) range)
    {
        int bottom = (int)Math.Clamp(range.Low, -1, grid.Dots);
        int top = (int)Math.Clamp(range.High, -1, grid.Dots);
        for (int dot = bottom; dot <= top; dot++)
            grid.Set(column, dot);
    }

    private static void Dot(DotGrid grid, int column, (double Low, double High) range)
    {
        if (column % 2 == 0)
            grid.Set(column, (int)Math.Clamp(Math.Round((range.Low + range.High) / 2), -1, grid.Dots));
    }

    /// <summary>Stretches a column to meet the one before it, so that a steep curve stays in one piece.</summary>
    private static (double Low, double High) Joined((double Low, double High) now, (double Low, double High)? before)
        => before is not (double low, double high) ? now
            : high < now.Low - 1 ? (high + 1, now.High)
            : low > now.High + 1 ? (now.Low, low - 1) : now;
}
