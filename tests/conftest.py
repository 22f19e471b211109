"""Settings for all tests: hypothesis profiles, and saying aloud what is skipped."""

import os

from hypothesis import HealthCheck, settings

# How long drawing takes says how busy the machine is, not whether the program is right.
settings.register_profile("fast", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.register_profile(
    "ci", deadline=None, max_examples=200, suppress_health_check=[HealthCheck.too_slow]
)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "fast"))
