using ColdSim.App.Screens.Drawing;

namespace ColdSim.App.Screens.Plan;

/// <summary>The rows and columns of everything on the page of the plan: what matters least goes first, the verdict and the nights stay.</summary>
internal sealed record PlanLayout
{
    /// <summary>The smallest page that is drawn.</summary>
    public const int MinWidth = 40, MinHeight = 9;

    /// <summary>Columns of the list of what can be tried, with the rule on its left.</summary>
    public const int ColumnWidth = 34;

    /// <summary>The fewest columns of a picture.</summary>
    public const int LeastPictureWidth = 40;

    /// <summary>From so many columns on that list is beside everything else.</summary>
    public const int WideFrom = 112;

    private const int Roomy = 20, LeastPicture = 6, LeastNights = 3;

    /// <summary>Whether there is a title above the verdict.</summary>
    public bool HasTitle { get; init; }

    /// <summary>The most rows of the verdict.</summary>
    public int VerdictRows { get; init; }

    /// <summary>The most rows of the reason.</summary>
    public int ReasonRows { get; init; }

    /// <summary>Rows of the table's heading.</summary>
    public int HeadRows { get; init; }

    /// <summary>Columns of the nights and the picture.</summary>
    public int Width { get; init; }

    /// <summary>Whether what can be tried is beside the nights, not below them.</summary>
    public bool IsWide { get; init; }

    /// <summary>Whether a list fits below the nights.</summary>
    public bool HasLower { get; init; }

    /// <summary>The layout of a page.</summary>
    /// <param name="width">Its columns.</param>
    /// <param name="height">Its rows.</param>
    public static PlanLayout For(int width, int height)
    {
        bool wide = width >= WideFrom && height >= Roomy;
        return new()
        {
            HasTitle = height >= 14,
            VerdictRows = height >= 34 ? 4 : height >= Roomy ? 3 : 2,
            ReasonRows = height >= 34 ? 4 : height >= Roomy ? 3 : 0,
            HeadRows = height >= 14 ? 2 : height >= 11 ? 1 : 0,
            IsWide = wide,
            Width = wide ? width - ColumnWidth : width,
            HasLower = width >= Sheet.MinWidth && height >= Sheet.MinHeight,
        };
    }

    /// <summary>Rows of nights that are shown.</summary>
    /// <param name="room">Rows between the table's heading and the last row.</param>
    /// <param name="nights">How many nights there are.</param>
    public int NightRows(int room, int nights)
        => HasLower ? Math.Min(nights, Math.Max(LeastNights, room - 1 - Math.Max(LeastPicture, room / 2))) : Math.Min(nights, Math.Max(1, room));
}
