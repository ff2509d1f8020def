using CsCheck;
using Runnel.Engine.Weather;

namespace Runnel.Engine.Tests.Weather;

public sealed class GroundTemperatureTests
{
    // Monthly means of a public typical-year weather file for Chicago (TMY3, station 725300), and the ground temperatures in its header.
    private static readonly double[] ChicagoAir = [-4.6, -2.5, 3.8, 10.0, 15.3, 21.1, 24.1, 21.8, 18.1, 11.0, 4.7, -3.7];
    private static readonly double[] Half = [-1.89, -3.06, -0.99, 2.23, 10.68, 17.20, 21.60, 22.94, 20.66, 15.60, 8.83, 2.56];
    private static readonly double[] Two = [2.39, 0.31, 0.74, 2.45, 8.10, 13.21, 17.30, 19.50, 19.03, 16.16, 11.50, 6.56];
    private static readonly double[] Four = [5.93, 3.80, 3.34, 3.98, 7.18, 10.62, 13.78, 15.98, 16.49, 15.25, 12.51, 9.17];
    private static readonly double[] Middles = [16, 45.5, 75, 105.5, 136, 166.5, 197, 228, 258.5, 289, 319.5, 350];

    [Theory]
    [InlineData(0, 15, -1.56)]
    [InlineData(0, 288, 11.04)]
    [InlineData(0.5, 105, 7.07)]
    [InlineData(1, 196, 16.69)]
    [InlineData(2, 15, 6.53)]
    [InlineData(2, 196, 13.16)]
    [InlineData(4, 288, 12.27)]
    [InlineData(30, 100, 9.9)]
    [Proof("ground-temperature", Evidence.Derived, "the same equation worked out elsewhere for T_m 9.9, A 11.5, t₀ 20, 0.0557 m²/d")]
    public void The_wave_goes_down_as_worked_out(double depth, double day, double expected) =>
        Assert.Equal(expected, GroundTemperature.AtDepth(9.9, 11.5, 20, 0.0557, depth, day), 0.011);

    [Fact]
    [Proof("ground-temperature", Evidence.Derived, "it obeys the heat equation, ∂T/∂t = a ∂²T/∂z², by finite differences, and is the surface's wave at the surface")]
    public void It_obeys_the_heat_equation() =>
        Gen.Select(Gen.Double[0.01, 0.15], Gen.Double[0.1, 8], Gen.Double[10, 350], Gen.Double[1, 366]).Sample((a, z, day, coldest) =>
        {
            double T(double depth, double t) => GroundTemperature.AtDepth(10, 12, coldest, a, depth, t);
            const double dz = 0.01, dt = 0.05;
            var inTime = (T(z, day + dt) - T(z, day - dt)) / (2 * dt);
            var inDepth = (T(z + dz, day) - 2 * T(z, day) + T(z - dz, day)) / (dz * dz);
            Assert.Equal(inTime, a * inDepth, 1e-4);
            Assert.Equal(10 - 12 * Math.Cos(2 * Math.PI * (day - coldest) / 365), T(0, day), 1e-9);
        });

    [Fact]
    [Proof("ground-temperature-down-to", Evidence.Derived, "it is the mean of the temperatures at all depths above, added up in 4000 layers")]
    public void The_mean_down_is_the_mean_of_all_depths()
    {
        foreach (var (a, z, day) in new[] { (0.0557, 0.5, 15.0), (0.0557, 4, 196), (0.02, 2, 100), (0.1, 10, 300), (0.05, 0.01, 20) })
        {
            var sum = 0.0;
            for (var i = 0; i < 4000; i++)
            {
                sum += GroundTemperature.AtDepth(9.9, 11.5, 20, a, z * (i + 0.5) / 4000, day);
            }
            Assert.Equal(sum / 4000, GroundTemperature.DownTo(9.9, 11.5, 20, a, z, day), 1e-6);
        }
    }

    [Theory]
    [InlineData(0.5, 0.9064, 5.5)]
    [InlineData(2, 0.6754, 19.8)]
    [InlineData(4, 0.4596, 33.7)]
    [Proof("ground-temperature-down-to", Evidence.Derived, "the same equation worked out elsewhere with 0.05574 m²/d")]
    public void The_mean_down_swings_as_worked_out(double depth, double factor, double lag)
    {
        var (left, later) = GroundTemperature.DownTo(GroundTemperature.WeatherFileDiffusivity, depth);
        Assert.Equal(factor, left, 1e-3);
        Assert.Equal(lag, later, 0.1);
    }

    [Fact]
    [Proof("ground-temperature-down-to", Evidence.Published, "ground temperatures printed in the header of the Chicago weather file (TMY3, station 725300) against its monthly air means")]
    public void The_ground_of_a_weather_file_swings_as_printed()
    {
        static double Swing(double[] months) => (months.Max() - months.Min()) / 2;
        foreach (var (depth, printed) in new[] { (0.5, Half), (2, Two), (4, Four) })
        {
            var (factor, _) = GroundTemperature.DownTo(GroundTemperature.WeatherFileDiffusivity, depth);
            Assert.Equal(Swing(printed), factor * Swing(ChicagoAir), 0.12);
            // Their own mean is 0.2 K below that of the hours.
            Assert.Equal(ChicagoAir.Average(), printed.Average(), 0.3);
        }
        var between = GroundTemperature.DownTo(GroundTemperature.WeatherFileDiffusivity, 4).LagDays
            - GroundTemperature.DownTo(GroundTemperature.WeatherFileDiffusivity, 0.5).LagDays;
        Assert.Equal(between, GroundTemperature.FromMonths(Four).Coldest - GroundTemperature.FromMonths(Half).Coldest, 2.0);
        // The printed months are no pure wave (from April to May 0.5 m jumps 8.5 K): one wave through all of them comes within 2 K of each.
        var surface = GroundTemperature.FromMonths(Half);
        var coldest = surface.Coldest - GroundTemperature.DownTo(GroundTemperature.WeatherFileDiffusivity, 0.5).LagDays;
        for (var m = 0; m < 12; m++)
        {
            foreach (var (depth, printed) in new[] { (0.5, Half), (2, Two), (4, Four) })
            {
                Assert.Equal(printed[m],
                    GroundTemperature.DownTo(ChicagoAir.Average(), Swing(ChicagoAir), coldest, GroundTemperature.WeatherFileDiffusivity, depth, Middles[m]), 2.0);
            }
        }
    }

    // The figure that weather files print is per hour, though they say per day.
    [Fact]
    public void The_printed_diffusivity_is_per_hour()
    {
        Assert.Equal(24 * 2.3225760e-3, GroundTemperature.WeatherFileDiffusivity, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => GroundTemperature.DownTo(2.3225760e-3, 2));
        // Taken at its word, nothing would be left at 4 m where the file prints almost half.
        var b = 4 * Math.Sqrt(Math.PI / (365 * 2.3225760e-3));
        Assert.True(1 / (Math.Sqrt(2) * b) < 0.1);
        Assert.Equal(0.458, (16.49 - 3.34) / (24.1 + 4.6), 0.001);
    }

    [Fact]
    public void A_wave_is_found_again_in_its_months() =>
        Gen.Select(Gen.Double[-10, 25], Gen.Double[1, 20], Gen.Double[1, 365]).Sample((mean, amplitude, coldest) =>
        {
            var months = new double[12];
            for (var m = 0; m < 12; m++)
            {
                for (var k = 0; k < 100; k++)
                {
                    var day = 365 * (m + (k + 0.5) / 100) / 12 + 0.5;
                    months[m] += (mean - amplitude * Math.Cos(2 * Math.PI * (day - coldest) / 365)) / 100;
                }
            }
            var found = GroundTemperature.FromMonths(months);
            Assert.Equal(mean, found.Mean, 1e-9);
            Assert.Equal(amplitude, found.Amplitude, 1e-3);
            var off = Math.Abs(found.Coldest - coldest);
            Assert.True(Math.Min(off, 365 - off) < 0.01);
            Assert.InRange(found.Coldest, 0.5, 366);
        });
}
