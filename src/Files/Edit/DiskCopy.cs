using System.Security.Cryptography;
using System.Text;
using Runnel.Files.Yaml;

namespace Runnel.Files.Edit;

/// <summary>What is known of a file on disk: where it is, and what it held when it was last read or written.</summary>
internal sealed class DiskCopy
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private readonly string path;
    private byte[] hash;

    private DiskCopy(string path, byte[] hash) => (this.path, this.hash) = (path, hash);

    public static DiskCopy? Read(string path, out string text, out PlanError? error)
    {
        text = "";
        var name = Path.GetFileName(path);
        PlanError Fail(string problem, string mend) => new(name, 1, 1, "", "", problem, mend);
        try
        {
            var file = new FileInfo(path);
            // Four bytes a character at most: what is longer is refused without reading it.
            if (file.Exists && file.Length > 4L * YamlTree.LongestText)
            {
                error = Fail($"the file has {file.Length:N0} bytes, more than a plan may have", "a plan is a few pages; check that this is the right file");
                return null;
            }
            var bytes = File.ReadAllBytes(path);
            text = Strict.GetString(bytes);
            error = null;
            return new(Path.GetFullPath(File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path), SHA256.HashData(bytes));
        }
        catch (DecoderFallbackException)
        {
            error = Fail("the file is not in UTF-8", "save it as UTF-8 in your editor");
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            error = Fail("there is no such file", "check its name and folder");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            error = Fail("the file cannot be read", e.Message);
        }
        return null;
    }

    /// <summary>The text of a file in the same folder, or null.</summary>
    public static string? ReadBeside(string path, string name)
    {
        var beside = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".", name);
        return Read(beside, out var text, out var error) is null || error is not null ? null : text;
    }

    public void Write(string text)
    {
        var bytes = Strict.GetBytes(text);
        var temporary = Path.Combine(Path.GetDirectoryName(path)!, $".{Path.GetFileName(path)}.{Guid.NewGuid():N}.new");
        try
        {
            Unchanged();
            using (var file = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                if (!OperatingSystem.IsWindows())
                {
                    File.SetUnixFileMode(file.SafeFileHandle, File.GetUnixFileMode(path));
                }
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }
            Unchanged();
            File.Move(temporary, path, overwrite: true);
            hash = SHA256.HashData(bytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            File.Delete(temporary);
            throw e as PlanSaveException ?? new PlanSaveException($"{Path.GetFileName(path)} cannot be saved: {e.Message}", e);
        }
    }

    private void Unchanged()
    {
        if (!File.Exists(path))
        {
            throw new PlanSaveException($"{Path.GetFileName(path)} was removed from its folder after it was read; nothing was written. Save a copy of your text, then open the file again.");
        }
        if (!SHA256.HashData(File.ReadAllBytes(path)).AsSpan().SequenceEqual(hash))
        {
            throw new PlanSaveException($"{Path.GetFileName(path)} was changed by someone else after it was read; nothing was written. Open it again, then make your change.");
        }
    }
}
