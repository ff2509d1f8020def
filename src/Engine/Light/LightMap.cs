namespace Runnel.Engine.Light;

/// <summary>Lamps over one bed.</summary>
/// <param name="Bed">The bed.</param>
/// <param name="Lamps">Where they hang: see <see cref="LampPlacement"/>.</param>
/// <param name="Height">Height of all lamps above the leaves, m, from 0.01 to 100, and at least a hundredth of the bed's longer side.</param>
/// <param name="Emitter">How each spreads its photons.</param>
/// <param name="Photons">Photons of each lamp, µmol/s, from 0 to 100 000.</param>
/// <param name="Curtains">White curtains on all sides, or null; the lamps must then hang over the bed.</param>
public sealed record LightScene(
    BedOutline Bed, IReadOnlyList<LampSpot> Lamps, double Height, Emitter Emitter, double Photons, Curtains? Curtains = null);

/// <summary>Photon flux density over a bed, and how much of the lamps' light arrives there.</summary>
public sealed class LightMap
{
    /// <summary>Cells along and across that pictures and shares are made with.</summary>
    public const int UsualCells = 30;

    internal const int MaxCells = 400;
    internal const double MaxPhotons = 1e5;

    /// <summary>A bed longer than so many heights of its lamps is refused: its map would need too many samples.</summary>
    public const double LongestInHeights = 100;

    // Light under a lamp falls off over about its height; a sample every quarter of that keeps the sum within half a percent.
    private const double Samples = 4;

    private readonly double[] cells;

    private LightMap(BedOutline bed, int columns, int rows, double[] cells, double direct, double emitted)
    {
        (Bed, Columns, Rows, this.cells) = (bed, columns, rows, cells);
        (Least, Greatest) = (cells.Min(), cells.Max());
        Mean = cells.Average();
        Direct = emitted > 0 ? direct / emitted : 0;
        Share = emitted > 0 ? Mean * bed.Area / emitted : 0;
    }

    /// <summary>The bed.</summary>
    public BedOutline Bed { get; }

    /// <summary>Cells along the bed.</summary>
    public int Columns { get; }

    /// <summary>Cells across the bed.</summary>
    public int Rows { get; }

    /// <summary>Mean of one cell, µmol/m²/s.</summary>
    public double this[int column, int row] => cells[row * Columns + column];

    /// <summary>Mean of the bed, µmol/m²/s.</summary>
    public double Mean { get; }

    /// <summary>Darkest cell, µmol/m²/s.</summary>
    public double Least { get; }

    /// <summary>Brightest cell, µmol/m²/s.</summary>
    public double Greatest { get; }

    /// <summary>Darkest cell over mean, from 0 to 1; 0 for no light. Growers' benches aim at 0.7 to 0.8 and more (from memory).</summary>
    public double Evenness => Mean > 0 ? Least / Mean : 0;

    /// <summary>Share of the lamps' photons that falls on the bed without a curtain's help, from 0 to 1.</summary>
    public double Direct { get; }

    /// <summary>Share of the lamps' photons that reaches the bed, from 0 to 1.</summary>
    public double Share { get; }

    /// <summary>True if a bed can be mapped under lamps of a height, both in m.</summary>
    public static bool CanMap(BedOutline bed, double height)
    {
        ArgumentNullException.ThrowIfNull(bed);
        return height is >= PointSource.MinHeight and <= PointSource.MaxHeight && Math.Max(bed.Length, bed.Width) <= LongestInHeights * height;
    }

    /// <summary>Maps a scene.</summary>
    /// <param name="scene">Lamps over a bed.</param>
    /// <param name="columns">Cells along the bed, from 1 to 400.</param>
    /// <param name="rows">Cells across, from 1 to 400.</param>
    /// <exception cref="ArgumentException">The scene is not such as its parts demand.</exception>
    /// <remarks>Sum over the lamps of photons × emitter density, averaged over each cell; curtains as <see cref="Light.Curtains"/> says. The
    /// sum over the cells is within half a percent of the photons that arrive.</remarks>
    public static LightMap Of(LightScene scene, int columns = UsualCells, int rows = UsualCells)
    {
        Check(scene);
        Range.Within(columns, 1, MaxCells);
        Range.Within(rows, 1, MaxCells);
        var bed = scene.Bed;
        var grid = new double[columns * rows];
        var (dx, dy) = (bed.Length / columns, bed.Width / rows);
        var (nx, ny) = (SamplesIn(dx, scene.Height), SamplesIn(dy, scene.Height));
        foreach (var lamp in scene.Lamps)
        {
            Add(scene, lamp, grid, columns, dx, dy, nx, ny);
        }
        var direct = grid.Average() * bed.Area;
        var emitted = scene.Photons * scene.Lamps.Count;
        if (scene.Curtains is { } curtains)
        {
            AddThrownBack(scene, curtains, Math.Max(0, emitted * scene.Emitter.Downward - direct), grid, columns, dx, dy);
        }
        return new(bed, columns, rows, grid, direct, emitted);
    }

    private static void Add(LightScene scene, LampSpot lamp, double[] cells, int columns, double dx, double dy, int nx, int ny)
    {
        var each = scene.Photons / (nx * ny);
        for (var i = 0; i < cells.Length; i++)
        {
            var (x0, y0) = (i % columns * dx - lamp.X, i / columns * dy - lamp.Y);
            var sum = 0.0;
            for (var sy = 0; sy < ny; sy++)
            {
                var y = y0 + (sy + 0.5) * dy / ny;
                for (var sx = 0; sx < nx; sx++)
                {
                    var x = x0 + (sx + 0.5) * dx / nx;
                    sum += lamp.Turned ? scene.Emitter.Density(y, x, scene.Height) : scene.Emitter.Density(x, y, scene.Height);
                }
            }
            cells[i] += each * sum;
        }
    }

    private static void AddThrownBack(LightScene scene, Curtains curtains, double missed, double[] cells, int columns, double dx, double dy)
    {
        var (length, width, height) = (scene.Bed.Length, scene.Bed.Width, scene.Height);
        var thrown = missed * Light.Curtains.Thrown(curtains.Reflectance / 100, Light.Curtains.ToBed(length, width, height));
        var exitance = thrown / Light.Curtains.WallArea(length, width, height);
        for (var i = 0; i < cells.Length; i++)
        {
            var (x, y) = ((i % columns + 0.5) * dx, (i / columns + 0.5) * dy);
            cells[i] += exitance * (1 - DiffuseRectangle.Factor(-x, length - x, -y, width - y, height));
        }
    }

    private static int SamplesIn(double side, double height) => Math.Max(1, (int)Math.Ceiling(Samples * side / height));

    private static void Check(LightScene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        Range.Within(scene.Photons, 0, MaxPhotons);
        Range.Within(scene.Height, PointSource.MinHeight, PointSource.MaxHeight);
        if (!CanMap(scene.Bed, scene.Height))
        {
            throw new ArgumentException($"the bed is longer than {LongestInHeights} heights of its lamps", nameof(scene));
        }
        if (scene.Lamps.Count is 0 or > LampPlacement.MaxLamps)
        {
            throw new ArgumentException($"a map needs 1 to {LampPlacement.MaxLamps} lamps", nameof(scene));
        }
        foreach (var lamp in scene.Lamps)
        {
            Range.Within(lamp.X, -PointSource.MaxAside, 2 * PointSource.MaxAside);
            Range.Within(lamp.Y, -PointSource.MaxAside, 2 * PointSource.MaxAside);
            if (scene.Curtains is not null && !(lamp.X >= 0 && lamp.X <= scene.Bed.Length && lamp.Y >= 0 && lamp.Y <= scene.Bed.Width))
            {
                throw new ArgumentException("a lamp hangs outside the curtains", nameof(scene));
            }
        }
    }
}
