using System.Collections.Immutable;
using System.Globalization;

namespace Progression.Records.Clinic;

/// <summary>What the operating system says of the process and of who started it.</summary>
public sealed record ProcessFacts
{
    private const string LoginFile = "/proc/self/loginuid";

    /// <summary>Number of the account that started it.</summary>
    public required uint RealUser { get; init; }

    /// <summary>Number of the account it works as.</summary>
    public required uint EffectiveUser { get; init; }

    /// <summary>Numbers of its groups.</summary>
    public required ImmutableArray<uint> Groups { get; init; }

    /// <summary>What the variable SUDO_UID says; null when it is not set. Only the account the process works as, and root, can have set it.</summary>
    public string? SudoUser { get; init; }

    /// <summary>Number of the account that signed in, which the kernel keeps through every change of account; null where it was never set.</summary>
    public uint? LoginUser { get; init; }

    /// <summary>The facts of this process.</summary>
    /// <param name="variable">Reads an environment variable.</param>
    public static ProcessFacts Current(Func<string, string?> variable)
    {
        ArgumentNullException.ThrowIfNull(variable);
        return new ProcessFacts
        {
            RealUser = NativeAccount.RealUser(),
            EffectiveUser = NativeAccount.EffectiveUser(),
            Groups = NativeAccount.OwnGroups(),
            SudoUser = variable("SUDO_UID"),
            LoginUser = Login(),
        };
    }

    private static uint? Login()
    {
        try
        {
            // All ones: nobody has signed in, as in a container or a service.
            return uint.TryParse(File.ReadAllText(LoginFile), NumberStyles.None, CultureInfo.InvariantCulture, out uint login) && login != uint.MaxValue ? login : null;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
