using System.Globalization;
using ColdSim.App.Screens.Drawing;
using ColdSim.Model.Appliances;
using ColdSim.Planning;

namespace ColdSim.App.Screens.Tries;

/// <summary>What burns gas beside the furnace: on or off, one by one.</summary>
internal static class BurnerAdjustments
{
    private const int LongestName = 17;

    /// <summary>One for each.</summary>
    public static IEnumerable<Adjustment> Of(Scenario scenario)
    {
        Dictionary<string, int> counted = [];
        foreach (GasAppliance appliance in scenario.Rig.Appliances)
        {
            string table = Table(appliance);
            int number = counted[table] = counted.GetValueOrDefault(table) + 1;
            bool isOff = appliance.IsOff;
            string key = string.Create(CultureInfo.InvariantCulture, $"{table}.{number}.off");
            yield return new(key, CellText.Cut(CellText.SingleWidth(appliance.Name), LongestName))
            {
                AsItIs = _ => isOff ? 0 : 1,
                Show = (on, _) => on > 0 ? "on" : "off",
                Grid = _ => ValueGrid.Counts(0, 1),
                Changes = (on, _) => [new(key, on > 0 ? "false" : "true")],
                IsEasierHigh = false,
            };
        }
    }

    // They are read kind by kind, in the order written.
    private static string Table(GasAppliance appliance) => appliance switch
    {
        AbsorptionRefrigerator => "refrigerator",
        StorageWaterHeater => "water_heater",
        OnDemandWaterHeater => "on_demand_heater",
        Cooker => "cooker",
        CatalyticHeater => "catalytic_heater",
        _ => "draw",
    };
}
