using System.Globalization;

namespace Progression.Records.Clinic;

/// <summary>Who called sudo, as sudo says and the kernel does not contradict.</summary>
internal static class SudoCaller
{
    private const string Asked = "sudo says who called it, and the kernel knows nobody else to have signed in.";

    /// <summary>The number of the caller; null where nobody is vouched for, with the condition that does not hold.</summary>
    /// <remarks>Root may do everything to the files anyway, so a sign-in of another number before it is no contradiction.</remarks>
    public static (uint? Caller, Condition Condition) Of(ProcessFacts process)
    {
        if (!uint.TryParse(process.SudoUser, NumberStyles.None, CultureInfo.InvariantCulture, out uint caller))
        {
            return (null, new Condition(Asked, "sudo did not start the program.", "start it through the sudo rule of docs/administrators.md; for upkeep, from root: sudo -u ACCOUNT progression"));
        }

        return caller != 0 && process.LoginUser is uint login && login != caller
            ? (null, new Condition(Asked, $"sudo names {NativeAccount.NameOf(caller)}; {NativeAccount.NameOf(login)} signed in.", "sign in under your own account, without su"))
            : (caller, new Condition(Asked));
    }
}
