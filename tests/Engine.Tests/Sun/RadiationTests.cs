using Runnel.Engine.Light;
using Runnel.Engine.Sun;

namespace Runnel.Engine.Tests.Sun;

public sealed class RadiationTests
{
    [Theory]
    [InlineData(1000, 10, 1, 0.71813, 217.86, 794.21)]
    [InlineData(1000, 10, 171, 0.76821, 170.79, 842.00)]
    [InlineData(50, 85, 1, 0.40572, 41.57, 96.72)]
    [InlineData(1000, 10, 180, 0.76892, 170.44, 842.36)]
    [Proof("diffuse-share", Evidence.Published, "Erbs's model as evaluated in the pvlib library's reference tests, solar constant 1366.1, distance by Spencer 1971")]
    public void The_split_is_as_published(double global, double zenith, int day, double clearness, double diffuse, double direct)
    {
        var b = 2 * Math.PI * (day - 1) / 365;
        var above = 1366.1 * (1.00011 + 0.034221 * Math.Cos(b) + 0.00128 * Math.Sin(b) + 0.000719 * Math.Cos(2 * b) + 0.000077 * Math.Sin(2 * b));
        var cos = Math.Cos(zenith * Math.PI / 180);
        var k = global / (above * cos);
        // The library keeps the sine above 0.065 (zenith 86.3°), which these cases do not touch.
        Assert.Equal(clearness, k, 2e-4);
        var sky = global * DiffuseShare.Erbs(k);
        Assert.Equal(diffuse, sky, 0.1);
        Assert.Equal(direct, (global - sky) / cos, 0.2);
    }

    [Theory]
    [InlineData(0.1, 0.9910)]
    [InlineData(0.22, 0.9802)]
    [InlineData(0.3, 0.9486)]
    [InlineData(0.5, 0.6591)]
    [InlineData(0.7, 0.2440)]
    [InlineData(0.8, 0.1653)]
    [InlineData(0.9, 0.165)]
    [Proof("diffuse-share", Evidence.Derived, "the printed polynomial worked out elsewhere; its pieces meet within 0.002")]
    public void The_pieces_meet(double clearness, double share)
    {
        Assert.Equal(share, DiffuseShare.Erbs(clearness), 1e-4);
        Assert.Equal(DiffuseShare.Erbs(0.22), DiffuseShare.Erbs(0.2200001), 0.002);
        Assert.Equal(DiffuseShare.Erbs(0.8), DiffuseShare.Erbs(0.8000001), 0.002);
    }

    [Theory]
    [InlineData(60, 7.5, 0.1999)]
    [InlineData(60, 52.5, 0.0337)]
    [InlineData(75, 37.5, 0.1077)]
    [InlineData(90, 7.5, 0.1400)]
    [InlineData(90, 82.5, 0.0122)]
    [InlineData(105, 67.5, 0.0518)]
    [InlineData(120, 112.5, 0.0060)]
    [InlineData(107.37, -52.5, 0.0759)]
    [Proof("hour-of-day-share", Evidence.Derived, "worked out elsewhere from the same equation as recalled; Duffie and Beckman's examples 2.13.1 (0.076) and 2.13.2 (3.7 MJ of 31.4) from memory")]
    public void The_hours_of_a_day_have_their_shares(double sunset, double hour, double share)
    {
        Assert.Equal(share, HourOfDay.CollaresPereiraRabl(sunset, hour), 6e-5);
        Assert.Equal(HourOfDay.CollaresPereiraRabl(sunset, hour), HourOfDay.CollaresPereiraRabl(sunset, -hour), 1e-15);
        Assert.Equal(3.7, 31.4 * HourOfDay.CollaresPereiraRabl(100.5, 22.5), 0.02);
    }

    [Fact]
    [Proof("hour-of-day-share", Evidence.Derived, "what falls in a day falls in its hours: the shares add up to 1 within 1.5 %")]
    public void The_shares_of_a_day_add_up()
    {
        for (var sunset = 60.0; sunset <= 120; sunset += 2.5)
        {
            var sum = Enumerable.Range(0, 24).Sum(h => HourOfDay.CollaresPereiraRabl(sunset, -172.5 + 15 * h));
            Assert.Equal(1, sum, 0.0145);
        }
        Assert.Equal(0, HourOfDay.CollaresPereiraRabl(60, 67.5));
    }

    [Theory]
    [InlineData(0, 100, 0, 90, 40, 25, 88.302)]
    [InlineData(0, 0, 900, 90, 40, 25, 26.32)]
    [Proof("tilted-radiation", Evidence.Published, "the pvlib library's reference tests: isotropic sky 100 W/m² on 40°, ground 900 W/m² with albedo 0.25 on 40°")]
    public void Tilted_planes_get_what_is_published(double direct, double diffuse, double global, double incidence, double tilt, double albedo, double expected) =>
        Assert.Equal(expected, TiltedPlane.Isotropic(direct, diffuse, global, incidence, tilt, albedo), 0.005);

    [Fact]
    [Proof("tilted-radiation", Evidence.Derived, "a level plane gets the global radiation; a wall sees half the sky and half the ground; behind it the sun does nothing")]
    public void A_level_plane_gets_the_whole()
    {
        Assert.Equal(800 * Math.Cos(0.5) + 120, TiltedPlane.Isotropic(800, 120, 822, 0.5 * 180 / Math.PI, 0, 20), 1e-9);
        Assert.Equal(60 + 41.1 * 2, TiltedPlane.Isotropic(800, 120, 822, 120, 90, 20), 1e-9);
        Assert.Equal(822 * 0.2, TiltedPlane.Isotropic(0, 0, 822, 0, 180, 20), 1e-9);
    }

    [Fact]
    [Proof("incidence", Evidence.Published, "the pvlib library's reference tests: wall facing north, zenith 30°, azimuth 60°, 75.5224878°; Reda and Andreas 2003, 25.187° on the tilt of their example (that one from memory)")]
    public void Angles_of_incidence_are_as_published()
    {
        Assert.Equal(75.5224878, TiltedPlane.Incidence(30, 60, 90, 0), 1e-7);
        Assert.Equal(25.18700, TiltedPlane.Incidence(50.11162, 194.340241, 30, 170), 1e-4);
    }

    [Fact]
    [Proof("incidence", Evidence.Derived, "a plane that faces the sun has none, and a level one the zenith")]
    public void A_plane_that_faces_the_sun_has_none()
    {
        Assert.Equal(0, TiltedPlane.Incidence(50, 200, 50, 200), 1e-5);
        Assert.Equal(50, TiltedPlane.Incidence(50, 200, 0, 10), 1e-9);
        Assert.Equal(TiltedPlane.Incidence(70, 359, 90, 1), TiltedPlane.Incidence(70, 1, 90, 359), 1e-9);
    }

    [Fact]
    [Proof("photon-flux-of-sun", Evidence.Published, "R package bigleaf, Rg.to.PPFD: 500 W/m² global is 1150 µmol/m²/s with share 0.5 and 4.6 µmol/J")]
    public void Photons_of_the_sun_are_as_published() => Assert.Equal(1150, Sunlight.PhotonFluxDensity(500, 2.3), 1e-9);

    [Fact]
    [Proof("photon-flux-of-sun", Evidence.Derived, "a day of steady sun gives the daily light of its radiation")]
    public void A_day_of_steady_sun_is_its_daily_light() =>
        Assert.Equal(DailyLight.FromRadiation(200 * 0.0864), DailyLight.Integral(Sunlight.PhotonFluxDensity(200), 24), 1e-9);
}
