namespace ColdSim.App.Screens;

/// <summary>One picture on the common time axis: one or two curves.</summary>
/// <param name="First">Read on the left axis; drawn first.</param>
/// <param name="Second">Drawn over it; read on the right axis where its axis is another one. Null where the run has no such curve.</param>
/// <param name="Missing">What to say of a curve that is not there.</param>
internal sealed record Strip(Trace First, Trace? Second = null, string Missing = "")
{
    public bool HasRightAxis => Second is not null && Second.Axis != First.Axis;

    public IEnumerable<Trace> Traces => Second is null ? [First] : [First, Second];
}
