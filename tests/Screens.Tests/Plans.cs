using Runnel.App;
using Runnel.Files;
using Runnel.Screens.State;

namespace Runnel.Screens.Tests;

/// <summary>Plans that the tests show. All invented.</summary>
internal static class Plans
{
    /// <summary>Two lamps of 50 W for 10 h a day at one flat price: sums that a reader can check by head.</summary>
    public const string Small = """
        # kept by hand
        runnel: 1
        name: Window loop
        currency: EUR
        place: {setting: indoors, air: 20 °C}
        vessels:
          tank: {role: fish tank, shape: box 100 cm x 50 cm x 50 cm, level: 40 cm, lid: yes}
          bed: {role: raft bed, shape: box 100 cm x 50 cm x 20 cm, level: 15 cm}
        lamps:
          strip: {count: 2, watts: 50 W, hours: 10 h}   # over the bed
        prices:
          strip: 20 to 40 EUR each, likely 30
        spare money: 0 %
        tariff: {energy: [{price: 0.30 EUR per kWh}]}
        """;

    public const string Wrong = """
        runnel: 1
        name: Window loop
        currency: EUR
        place: {setting: indoors}
        vessels:
          tank: {role: fish tank, shape: box 100 cm x 50 cm x 50 cm, level: deep}
        lamps:
          strip: {watts: many, hours: 10 h}
        """;

    public static OpenPlan Open(string text = Small, int draws = 0, TimeSpan? idle = null) =>
        new(() => Workbench.Of(PlanFile.Parse(text, "window.yaml")), idle ?? TimeSpan.Zero, draws);

    public static string Example(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", name));
}
