using ColdSim.Model.Supply;

namespace ColdSim.Tests.Model.Supply;

/// <summary>Regulator and supply fed by one cylinder.</summary>
internal static class OneCylinder
{
    public static double Flow_kg_s(this TwoStageRegulator regulator, double delivery_Pa, double cylinder_Pa, double air_Pa, double gas_K)
        => regulator.Flow_kg_s(delivery_Pa, new FeedPressures(cylinder_Pa, 0, gas_K), air_Pa);

    public static double Delivery_Pa(this TwoStageRegulator regulator, double flow_kg_s, double cylinder_Pa, double air_Pa, double gas_K)
        => regulator.Delivery_Pa(flow_kg_s, new FeedPressures(cylinder_Pa, 0, gas_K), air_Pa);

    public static SupplyPoint At(this GasSupply supply, double cylinder_Pa, double air_Pa, double gas_K)
        => supply.At(new FeedPressures(cylinder_Pa, 0, gas_K), air_Pa);

    public static double Delivery_Pa(this GasSupply supply, in SupplyPoint point, double cylinder_Pa, double air_Pa, double gas_K)
        => supply.Delivery_Pa(point, new FeedPressures(cylinder_Pa, 0, gas_K), air_Pa);
}
