using System.Globalization;

namespace ColdSim.Validation;

/// <summary>One figure of ours beside its reference.</summary>
/// <param name="Case">Which case.</param>
/// <param name="What">What is compared, with its unit.</param>
/// <param name="Ours">Our figure.</param>
/// <param name="Low">Lowest reference; the same as <paramref name="High"/> where there is one.</param>
/// <param name="High">Highest reference.</param>
/// <param name="Slack">How far beyond the references ours may lie; null where the figure is shown and not judged.</param>
/// <param name="Digits">Digits after the point in the table.</param>
internal sealed record Comparison(string Case, string What, double Ours, double Low, double High, double? Slack, int Digits)
{
    /// <summary>How far ours is outside the references; 0 within them.</summary>
    public double Outside => Ours < Low ? Ours - Low : Ours > High ? Ours - High : 0;

    /// <summary>Whether ours is as near as it must be.</summary>
    public bool IsNear => Slack is not { } slack || Math.Abs(Outside) <= slack;

    /// <summary>The row of the table: case, what, ours, reference, difference, allowed.</summary>
    public string[] Row()
    {
        string format = "F" + Digits.ToString(CultureInfo.InvariantCulture);
        string Shown(double value) => value.ToString(format, CultureInfo.InvariantCulture).Replace('-', '−');
        string reference = Low == High ? Shown(Low) : $"{Shown(Low)} to {Shown(High)}";
        string difference = Outside == 0 && Low != High ? "inside" : Shown(Outside);
        return [Case, What, Shown(Ours), reference, difference, Slack is { } slack ? Shown(slack) : "not judged"];
    }
}
