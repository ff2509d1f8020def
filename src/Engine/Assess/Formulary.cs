using Runnel.Engine.Crops;
using Runnel.Engine.Figures;
using Runnel.Engine.Filter;
using Runnel.Engine.Fish;
using Runnel.Engine.Flow;
using Runnel.Engine.Frame;
using Runnel.Engine.Heat;
using Runnel.Engine.Light;
using Runnel.Engine.Power;
using Runnel.Engine.Sun;
using Runnel.Engine.Volumes;
using Runnel.Engine.Water;
using Runnel.Engine.Weather;
using Runnel.Engine.Year;

namespace Runnel.Engine.Assess;

/// <summary>Every formula, by name: for the quick sum, the documentation and the tests.</summary>
public static class Formulary
{
    /// <summary>All formulas, by subject.</summary>
    public static IReadOnlyList<Formula> All { get; } =
    [
        .. WaterFormulas.All,
        .. FilterFormulas.All,
        .. FishFormulas.All,
        .. CropFormulas.All,
        .. VolumeFormulas.All,
        .. FlowFormulas.All,
        .. HeatFormulas.All,
        .. LightFormulas.All,
        .. SunFormulas.All,
        .. WeatherFormulas.All,
        .. PowerFormulas.All,
        .. FrameFormulas.All,
        .. YearFormulas.All,
    ];

    /// <summary>The formula of that name, or null.</summary>
    public static Formula? Find(string id) => All.FirstOrDefault(f => f.Id.Equals(id, StringComparison.OrdinalIgnoreCase));
}
