#!/usr/bin/env bash
# Unpacks Debian's synthesisers into a folder, for a machine where nothing can be installed:
# collect-voices.sh FOLDER. Run it on a Debian machine that has festival and espeak-ng installed (their
# libraries are copied), carry the folder over, and set VOICES_ROOT to it there. Festival looks for its files
# in /usr/share/festival whatever it is told, so link that to FOLDER/usr/share/festival.
set -euo pipefail
folder=$(realpath -m "$1")
mkdir -p "$folder/extra" "$folder/packages"
cd "$folder/packages"
apt-get download flite libflite1 espeak-ng espeak-ng-data libespeak-ng1 libpcaudio0 libsonic0 \
  festival festival-hi libestools2.5 libhtsengine1 festlex-cmu festlex-poslex \
  festvox-us-slt-hts festvox-kdlpc16k festvox-italp16k festvox-itapc16k festvox-hi-nsk \
  festvox-suopuhe-lj festvox-suopuhe-mv festvox-suopuhe-common
for package in *.deb; do dpkg -x "$package" "$folder"; done
rm -rf "$folder/packages" "$folder/usr/share/doc" "$folder/usr/share/man"
# What the programs link to, but for the C and C++ libraries, which are older here than elsewhere.
for program in festival espeak-ng; do ldd "$(command -v $program)"; done |
  awk '/=> \//{print $3}' | sort -u | grep -vE '/(libc|libm|libstdc\+\+|libgcc_s)\.so' |
  xargs -I{} cp -L {} "$folder/extra/"
