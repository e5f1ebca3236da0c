namespace ColdSim.App.Screens;

/// <summary>What a person asks of the screen.</summary>
internal abstract record NightMessage
{
    private NightMessage()
    {
    }

    /// <summary>Left or right on the time axis.</summary>
    public sealed record Step(int Minutes) : NightMessage;

    /// <summary>Up or down: an hour each on the curves, a row each on a page of text.</summary>
    public sealed record Rows(int Count) : NightMessage;

    /// <summary>A page of rows.</summary>
    public sealed record Pages(int Count) : NightMessage;

    public sealed record First : NightMessage;

    public sealed record Last : NightMessage;

    public sealed record NextEvent(int Direction) : NightMessage;

    public sealed record NextNight(int Direction) : NightMessage;

    public sealed record PointAt(int Minute) : NightMessage;

    public sealed record OtherUnits : NightMessage;

    public sealed record Turn(OpenPage Page) : NightMessage;

    /// <summary>Takes the chosen row of the event list.</summary>
    public sealed record Choose : NightMessage;

    /// <summary>Back to the curves.</summary>
    public sealed record Close : NightMessage;
}
