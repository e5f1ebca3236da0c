using ColdSim.Model.Engine;
using ColdSim.Model.Furnace;

namespace ColdSim.Planning.Harms;

/// <summary>Counts the time without heat while the thermostat calls, and leaves out the purge and the tries of a start that succeeds.</summary>
internal sealed class FurnaceStart
{
    private double _starting_s;
    private bool _flameLost;
    private bool _wasLit;

    /// <summary>Adds a step.</summary>
    /// <returns>Time without heat that is now known to count; more than the step where a start has failed. [s]</returns>
    public double NoHeat_s(StepRecord record, double step_s)
    {
        if (!record.HeatCalled || record.BurnerLit)
        {
            Forget();
            _wasLit = record.BurnerLit;
            return 0;
        }

        bool isStart = record.Furnace is FurnacePhase.PrePurge or FurnacePhase.Trial or FurnacePhase.RetryPurge;
        if (record.Furnace == FurnacePhase.PrePurge) _flameLost = false;
        else if (_wasLit) _flameLost = true;
        _wasLit = false;
        if (isStart && !_flameLost)
        {
            _starting_s += step_s;
            return 0;
        }

        double counts_s = _starting_s + step_s;
        _starting_s = 0;
        return counts_s;
    }

    /// <summary>Forgets a start that is under way.</summary>
    public void Forget() => (_starting_s, _flameLost, _wasLit) = (0, false, false);
}
