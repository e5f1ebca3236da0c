using ColdSim.Model.Engine;

namespace ColdSim.Planning.Ensemble;

/// <summary>Notes how a run stands at every point of a fan; used again for the next run.</summary>
internal sealed class FanWatch(FanCounter fan) : IRunObserver
{
    public double[] Inside_K { get; } = new double[fan.Points];

    public double[] Left_kg { get; } = new double[fan.Points];

    /// <summary>Points noted so far.</summary>
    public int Count { get; private set; }

    public void Begin() => Count = 0;

    public void Stepped(StepRecord record)
    {
        while (Count < fan.Points && Count * fan.Spacing_s <= record.To.Time_s)
        {
            double x = Math.Max(0, (Count * fan.Spacing_s - record.From.Time_s) / (record.To.Time_s - record.From.Time_s));
            Inside_K[Count] = record.From.Inside_K + x * (record.To.Inside_K - record.From.Inside_K);
            Left_kg[Count] = record.From.Propane_kg + x * (record.To.Propane_kg - record.From.Propane_kg);
            Count++;
        }
    }

    public void Happened(in SimulationEvent happened, in Snapshot moment)
    {
    }
}
